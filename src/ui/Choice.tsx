import { memo } from 'react';
import type { Key } from 'react-aria-components';
import { Button, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';
import { isSameChoice, type Option } from './options.ts';
import { useNewest } from './use-newest.ts';

export interface ChoiceProps {
  readonly label: string;
  readonly options: readonly Option[];
  readonly chosen: string | null;
  onChoose(key: string): void;
}

/** One of a list of names. */
export function Choice({ onChoose, ...seen }: ChoiceProps) {
  return <DrawnChoice {...seen} onChoose={useNewest(onChoose)} />;
}

const DrawnChoice = memo(({ label, options, chosen, onChoose }: ChoiceProps) => {
  const choose = (key: Key | null) => {
    if (key !== null && key !== chosen) onChoose(String(key));
  };
  return (
    <Select className="choice" value={chosen} onChange={choose}>
      <Label>{label}</Label>
      <Button>
        <SelectValue />
        <span aria-hidden="true" className="choice-mark">
          ▾
        </span>
      </Button>
      <Popover className="choice-list">
        <ListBox items={options.map(({ key, text }) => ({ id: key, text }))}>
          {({ id, text }) => (
            <ListBoxItem id={id} textValue={text}>
              {text}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}, isSameChoice);
