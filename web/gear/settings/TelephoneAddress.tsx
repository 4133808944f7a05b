import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { calendarKey, renewCalendar } from '#web/api/useCalendar.ts';
import { useToast } from '#web/parts/Toast.tsx';

/** The address to type or copy into a telephone, who can read it, and how that ends. */
export function TelephoneAddress({ url, whose }: { url: string; whose: string }) {
  const client = useQueryClient();
  const say = useToast();
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const copy = () =>
    navigator.clipboard
      .writeText(url)
      .then(() => say('The address is copied.'))
      .catch(() => say('The browser does not let the address be copied; mark it and copy it by hand.'));
  const renew = async () => {
    setBusy(true);
    try {
      client.setQueryData(calendarKey, await renewCalendar());
      setAsked(false);
      say('Every calendar has a new address; those given out before lead to nothing.');
    } catch (error) {
      say(error instanceof Error ? error.message : String(error));
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <p>
        <code className="telephone-address">{url}</code>
      </p>
      <div className="row">
        <button type="button" onClick={() => void copy()}>
          Copy the address
        </button>
        <button type="button" onClick={() => setAsked(true)}>
          Make new addresses
        </button>
      </div>
      <p className="small quiet">
        In the telephone’s calendar add a calendar by its address. Whoever has the address and is in this
        network can read {whose} days, and nothing else, until you make new addresses or start the program
        without <code>--calendar-on</code>. It goes through the network unencrypted.
      </p>
      {asked && (
        <div className="caution stack" role="alert">
          <p>
            Make new addresses, for the club and for every lifter? Telephones that read a calendar now no
            longer get it and must be told their new address.
          </p>
          <div className="row">
            <button type="button" className="strong" disabled={busy} onClick={() => void renew()}>
              Make new ones
            </button>
            <button type="button" disabled={busy} onClick={() => setAsked(false)}>
              Keep them
            </button>
          </div>
        </div>
      )}
    </>
  );
}
