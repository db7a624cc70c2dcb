package org.tapeline.notify.notice;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tapeline.journal.EventJson;
import org.tapeline.notify.notice.CauseName.Recipient;

/** Reads {@code causes.json} when the service starts: with a gap it does not start. */
@Singleton
public class CauseTableFile {

  /** What stands in the file. */
  record Content(int version, List<Line> causes) {}

  /** One cause, in codes. */
  record Line(
      String cause,
      String when,
      String notice,
      Set<String> to,
      String urgency,
      Duration window,
      boolean household,
      List<String> overtakenBy,
      Optional<Boolean> overtakenByItsDate) {

    CauseRule rule() {
      return new CauseRule(
          CauseName.valueOf(constant(cause)),
          when,
          NoticeKind.of(notice),
          to.stream()
              .map(code -> Recipient.valueOf(constant(code)))
              .collect(Collectors.toUnmodifiableSet()),
          CauseTable.urgency(urgency),
          window,
          household,
          overtakenBy.stream().map(NoticeKind::of).toList(),
          overtakenByItsDate.orElse(false));
    }
  }

  @Produces
  @Singleton
  CauseTable table() {
    return read();
  }

  /**
   * The table that comes with the service.
   *
   * @throws IllegalArgumentException when something is missing or does not fit
   */
  public static CauseTable read() {
    try (InputStream in = CauseTableFile.class.getResourceAsStream("/causes.json")) {
      Content content = EventJson.MAPPER.readValue(in, Content.class);
      return new CauseTable(content.version(), content.causes().stream().map(Line::rule).toList());
    } catch (IOException e) {
      throw new UncheckedIOException("causes.json cannot be read", e);
    }
  }

  private static String constant(String code) {
    return code.toUpperCase(Locale.ROOT).replace('-', '_');
  }
}
