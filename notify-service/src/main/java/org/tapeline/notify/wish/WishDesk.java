package org.tapeline.notify.wish;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.notify.channel.Wishes;
import org.tapeline.notify.contact.Zones;
import org.tapeline.notify.notice.Notices;

/** Keeps what people asked for, and knows it when they are written to. */
@ApplicationScoped
public class WishDesk implements Wishes {
  private static final String GUARDIAN = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final Journal journal;
  private final CommandLog commands;
  private final Notices notices;
  private final Zones zones;
  private final Clock clock;

  WishDesk(Journal journal, CommandLog commands, Notices notices, Zones zones, Clock clock) {
    this.journal = journal;
    this.commands = commands;
    this.notices = notices;
    this.zones = zones;
    this.clock = clock;
  }

  @Override
  public List<String> of(String recipient) {
    return wish(recipient).channels();
  }

  @Override
  public Optional<Instant> quietUntil(String recipient, Instant now) {
    return WishRow.<WishRow>findByIdOptional(recipient)
        .map(WishRow::view)
        .flatMap(wish -> hours(recipient, wish))
        .flatMap(hours -> hours.endAfter(now));
  }

  /** In the caller's transaction. */
  public Wish wish(String recipient) {
    return WishRow.<WishRow>findByIdOptional(recipient).map(WishRow::view).orElse(Wish.NONE);
  }

  /**
   * @param by {@code guardian} or {@code staff}
   */
  public void set(UUID guardian, Wish wish, String by, UUID commandId) {
    commands.once(
        commandId,
        "set-wishes",
        Map.of("guardian", guardian, "by", by, "wish", wish.toString()),
        () -> {
          keep(guardian, wish, by, commandId);
          return Answer.of(204, Map.of());
        });
  }

  /** The person was erased, in the caller's transaction; the events hold nothing personal. */
  public void forget(String recipient) {
    WishRow.deleteById(recipient);
  }

  private void keep(UUID guardian, Wish wish, String by, UUID commandId) {
    Instant now = clock.instant();
    StreamName stream = StreamName.of("wishes", guardian, guardian);
    long before = journal.version(stream);
    WishesSet event =
        new WishesSet(
            guardian,
            wish.channels(),
            wish.quiet().map(q -> q.from().toString()).orElse(null),
            wish.quiet().map(q -> q.to().toString()).orElse(null),
            wish.zone().map(ZoneId::getId).orElse(null),
            by,
            now);
    journal.append(stream, before, List.of(event), Cause.command(commandId));
    WishRow.show(event, before + 1);
    notices.tryNow(guardian.toString());
  }

  private Optional<QuietHours> hours(String recipient, Wish wish) {
    return wish.quiet()
        .filter(quiet -> recipient.matches(GUARDIAN))
        .map(
            quiet ->
                new QuietHours(
                    quiet.from(),
                    quiet.to(),
                    wish.zone().orElseGet(() -> zones.ofGuardian(UUID.fromString(recipient)))));
  }
}
