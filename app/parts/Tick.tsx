/** A pen's tick. */
export const Tick = ({ className }: { readonly className?: string }) => (
  <svg className={className} viewBox="0 0 20 20" aria-hidden="true">
    <path d="M3 11.2 7.6 16Q11 8.4 17.2 3.6" />
  </svg>
)
