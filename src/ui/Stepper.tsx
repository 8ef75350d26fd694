import { useEffect, useRef } from 'react';
import { Button } from 'react-aria-components';
import { useNewest } from './use-newest.ts';

export interface StepperProps {
  /** What it does, for who cannot see the sign. */
  readonly word: string;
  readonly sign: string;
  onStep(): void;
  onLetGo(): void;
}

/** How long a press must last to be a hold, and the time between the steps of a hold. */
const HOLD_MS = 400;
const BETWEEN_MS = 80;

/** A button that steps once when pressed and goes on while it is held. Not a tab stop: arrow keys do the same. */
export function Stepper({ word, sign, onStep, onLetGo }: StepperProps) {
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  // a hold outlives many drawings of the page: each step takes the newest callback
  const step = useNewest(onStep);

  const stop = () => clearTimeout(timer.current);
  const goOn = () => {
    step();
    timer.current = setTimeout(goOn, BETWEEN_MS);
  };
  useEffect(() => () => clearTimeout(timer.current), []);

  return (
    <Button
      className="stepper"
      aria-label={word}
      excludeFromTabOrder
      preventFocusOnPress
      onPressStart={() => {
        step();
        timer.current = setTimeout(goOn, HOLD_MS);
      }}
      onPressEnd={() => {
        stop();
        onLetGo();
      }}
    >
      {sign}
    </Button>
  );
}
