/** The mark of the tool: a ledge on its wall with a chalk line under it. */
export function Mark() {
  return (
    <svg width={28} height={22} viewBox="0 0 28 22" aria-hidden>
      <path d="M1 2h26v5H1Z" fill="var(--ink)" />
      <path d="M9 9h3v12H9Z" fill="var(--ink)" />
      <path d="M15 17 25 9" stroke="var(--chalk)" strokeWidth={2.5} />
    </svg>
  );
}
