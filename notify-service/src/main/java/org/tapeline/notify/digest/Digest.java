package org.tapeline.notify.digest;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.words.Phrases;

/** One kind of digest; reads what is known here, in the caller's transaction. */
interface Digest {
  NoticeKind kind();

  /** Who gets it. */
  List<String> recipients();

  Content of(String recipient, ZoneId zone, Instant now, Phrases phrases);
}
