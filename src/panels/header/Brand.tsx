/** The mark and name of the program. */
export const Brand = () => (
  <h1 className="brand">
    <svg viewBox="0 0 32 32" aria-hidden="true">
      <path fill="#e8a317" d="M7 9h18v8c-3 4-6 7-9 7s-6-3-9-7z" />
      <path fill="none" stroke="#1d1b18" strokeWidth="3" d="M1 7.500h30M6.500 7.500v20h19v-20" />
    </svg>
    <span>Combwright</span>
  </h1>
)
