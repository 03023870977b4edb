import { useRef, useState } from 'react'
import { encodeShare } from '../../design/shareLink.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { Dialog } from './Dialog.tsx'

/** A link that holds the whole design; nothing is sent anywhere until the person sends it. */
export const ShareDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const design = useDesignStore((s) => s.design)
  const [isCopied, setCopied] = useState(false)
  const field = useRef<HTMLTextAreaElement>(null)
  const link = `${location.href.replace(/#.*$/, '')}#${encodeShare(design)}`

  const copy = async () => {
    field.current?.select()
    try {
      await navigator.clipboard.writeText(link)
      setCopied(true)
    } catch {
      // Without the right to the clipboard the selected text can still be copied by hand.
      setCopied(false)
    }
  }
  return (
    <Dialog title="Link to this design" onClose={onClose}>
      <p>The link holds the whole design. Who opens it gets a copy; yours stays as it is.</p>
      <textarea
        ref={field}
        readOnly
        rows={4}
        value={link}
        aria-label="Link"
        onFocus={(e) => e.target.select()}
      />
      <p role="status">{isCopied ? 'Copied.' : `${link.length} characters.`}</p>
      <p className="dialog-actions">
        <button type="button" className="plain strong" onClick={copy}>
          Copy the link
        </button>
        <button type="button" className="plain" onClick={onClose}>
          Close
        </button>
      </p>
    </Dialog>
  )
}
