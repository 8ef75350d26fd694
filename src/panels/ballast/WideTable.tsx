import type { ReactNode } from 'react';

/** A table that scrolls within itself where it is wider than its place, by finger and by arrow keys. */
export function WideTable({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by the Tab key, or no key could scroll it
    <section className="wide-table" aria-label={label} tabIndex={0}>
      <table>{children}</table>
    </section>
  );
}
