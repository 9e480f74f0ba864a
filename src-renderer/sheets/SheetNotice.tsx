import { useState } from 'react';
import { useWindow } from '../state/store-context';
import { Trouble } from './Trouble';

/** What went wrong since the sheet opened, said inside it, because the window's own notice lies under it. */
export function SheetNotice() {
  const notice = useWindow((state) => state.notice);
  const [before] = useState(notice);
  if (notice === before || notice?.tone !== 'trouble') return null;
  return <Trouble sentence={notice.sentence} details={notice.details ?? []} />;
}
