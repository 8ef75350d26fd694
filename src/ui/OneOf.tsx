import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';

export interface OneOfProps<Key extends string> {
  readonly label: string;
  readonly options: readonly { readonly key: Key; readonly text: string }[];
  readonly chosen: Key;
  onChoose(key: Key): void;
}

/** One of a few words that stand side by side. */
export function OneOf<Key extends string>({ label, options, chosen, onChoose }: OneOfProps<Key>) {
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
}
