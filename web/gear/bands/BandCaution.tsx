/** The risk of a band under load, beside the work it belongs to. */
export function BandCaution() {
  return (
    <div className="caution small">
      <p>
        <strong>A band that snaps back can blind.</strong> Look over every band for nicks and cracks first.
        Never stand in line with it, wear eye protection, fix the weights so that they cannot slide off, keep
        hands and feet from under them, and hang the scale only from a point rated for the load. The maker's
        limit and your gym's own rules come first.
      </p>
    </div>
  );
}
