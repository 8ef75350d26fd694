import { memo } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { isSameChoice, type Option } from './options.ts';
import { useNewest } from './use-newest.ts';

export interface OneOfProps<Key extends string> {
  readonly label: string;
  readonly options: readonly Option<Key>[];
  readonly chosen: Key;
  onChoose(key: Key): void;
}

/** One of a few words that stand side by side. */
export function OneOf<Key extends string>({ onChoose, ...seen }: OneOfProps<Key>) {
  // a key that is chosen is one of the options'
  const choose = useNewest((key: string) => onChoose(key as Key));
  return <DrawnOneOf {...seen} onChoose={choose} />;
}

const DrawnOneOf = memo(({ label, options, chosen, onChoose }: OneOfProps<string>) => {
  return (
    <div className="one-of">
      <span aria-hidden="true">{label}</span>
      <ToggleButtonGroup
        aria-label={label}
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[chosen]}
        onSelectionChange={(keys) => {
          const key = options.find((option) => keys.has(option.key))?.key;
          if (key !== undefined) onChoose(key);
        }}
      >
        {options.map(({ key, text }) => (
          <ToggleButton key={key} id={key}>
            {text}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
    </div>
  );
}, isSameChoice);
