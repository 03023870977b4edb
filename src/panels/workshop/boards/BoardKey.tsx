/** What the hatchings on the boards and sheets mean. */
export const BoardKey = () => (
  <ul className="cut-key">
    <li>
      <i className="mark-piece" aria-hidden="true" /> Part
    </li>
    <li>
      <i className="mark-kerf" aria-hidden="true" /> Saw cut
    </li>
    <li>
      <i className="mark-kept" aria-hidden="true" /> Keep
    </li>
    <li>
      <i className="mark-waste" aria-hidden="true" /> Waste and trimmed edges
    </li>
  </ul>
)
