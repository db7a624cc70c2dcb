package org.tapeline.notify.help;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.escalation.Surroundings;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.ReachedBy;
import org.tapeline.notify.place.Places;

/** Families ask for a call, and staff say that they called. */
@ApplicationScoped
public class HelpDesk {
  private final Journal journal;
  private final CommandLog commands;
  private final Surroundings surroundings;
  private final Places places;
  private final HelpNotices told;
  private final Notices notices;
  private final Caller caller;
  private final Clock clock;

  HelpDesk(
      Journal journal,
      CommandLog commands,
      Surroundings surroundings,
      Places places,
      HelpNotices told,
      Notices notices,
      Caller caller,
      Clock clock) {
    this.journal = journal;
    this.commands = commands;
    this.surroundings = surroundings;
    this.places = places;
    this.told = told;
    this.notices = notices;
    this.caller = caller;
    this.clock = clock;
  }

  /** Whether a call was asked for today; in the caller's transaction. */
  public boolean asked(NoticeRow notice) {
    return HelpCallRow.findByIdOptional(idOf(notice, field(notice))).isPresent();
  }

  /**
   * Asks for a call; asking again on the same day changes nothing. It does not count as having read
   * the notice: until somebody called, nobody knows what the family understood.
   *
   * @param sent made by the page
   */
  public void ask(UUID notice, UUID sent) {
    UUID command = DerivedId.from(sent, "help/" + notice);
    commands.once(
        command,
        "ask-for-help",
        Map.of("notice", notice),
        () -> {
          ask(NoticeRow.<NoticeRow>findById(notice), new Cause(command, command, "help"));
          return Answer.of(204, Map.of());
        });
  }

  private void ask(NoticeRow notice, Cause command) {
    Optional<String> field = field(notice);
    UUID guardian = UUID.fromString(notice.recipient);
    HelpAsked asked =
        new HelpAsked(idOf(notice, field), notice.notice, guardian, field, clock.instant());
    if (!HelpCallRow.insert(asked)) {
      return;
    }
    Cause cause = new Cause(command.id(), notice.correlationId, command.step());
    journal.append(stream(asked.help(), guardian), 0, List.of(asked), cause);
    told.tell(asked, notice, cause.step("help-notice"));
  }

  /**
   * Somebody called; that is as good as any way to tell the family what the notice says. Another
   * click changes nothing.
   *
   * @throws Problem when there is no such call, or it is of another fitter's field
   */
  Answer answer(UUID help, UUID commandId) {
    String by = caller.id();
    return commands.once(
        commandId,
        "answer-help",
        Map.of("help", help, "by", by),
        () -> {
          HelpCallRow row =
              HelpCallRow.locked(help)
                  .orElseThrow(() -> Problem.notFound("There is no such call. Load it again."));
          if (!caller.isManager() && (row.field == null || !caller.mayWorkAt(row.field))) {
            throw Problem.otherField("This family is of another field. Its fitters call.");
          }
          if (row.answeredAt == null) {
            answered(row, by, commandId);
          }
          return Answer.of(200, Map.of("help", help));
        });
  }

  private void answered(HelpCallRow row, String by, UUID commandId) {
    Instant now = clock.instant();
    UUID guardian = UUID.fromString(row.recipient);
    Cause cause = Cause.command(commandId);
    HelpAnswered answered = new HelpAnswered(row.help, guardian, by, now);
    journal.append(stream(row.help, guardian), row.version, List.of(answered), cause);
    HelpCallRow.answered(answered);
    notices.decide(
        row.notice,
        new NoticeCommand.Reach(ReachedBy.TELEPHONE, by, now),
        cause.step("reached-" + row.notice));
  }

  private Optional<String> field(NoticeRow notice) {
    return surroundings.fieldsOf(notice.notice).stream().findFirst();
  }

  /** One a day by the field's clock, for each person and matter. */
  private UUID idOf(NoticeRow notice, Optional<String> field) {
    ZoneId zone = places.zoneOf(field.orElse(""));
    LocalDate day = LocalDate.ofInstant(clock.instant(), zone);
    UUID matter = notice.refitCase == null ? notice.notice : notice.refitCase;
    return DerivedId.from(matter, "help/" + notice.recipient + "/" + day);
  }

  private static StreamName stream(UUID help, UUID guardian) {
    return StreamName.of("help", help, guardian);
  }
}
