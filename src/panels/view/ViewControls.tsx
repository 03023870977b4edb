import { CameraControls } from './CameraControls.tsx'
import { FrameControls } from './FrameControls.tsx'
import { MotionControls } from './MotionControls.tsx'
import { SectionControls } from './SectionControls.tsx'

/** Everything that changes the view and nothing of the design. */
export const ViewControls = () => (
  <section className="view-controls" aria-label="View of the hive">
    <CameraControls />
    <div className="view-sliders">
      <MotionControls />
    </div>
    <details className="view-more">
      <summary>Lift a frame, cut it open</summary>
      <div className="view-sliders">
        <FrameControls />
        <SectionControls />
      </div>
    </details>
  </section>
)
