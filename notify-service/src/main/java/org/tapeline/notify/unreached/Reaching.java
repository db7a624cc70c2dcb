package org.tapeline.notify.unreached;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.escalation.Surroundings;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.ReachedBy;

/** Records that somebody of the staff told a person; from then on nobody else is asked to. */
@ApplicationScoped
class Reaching {
  private final Notices notices;
  private final Surroundings surroundings;
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;

  Reaching(
      Notices notices, Surroundings surroundings, CommandLog commands, Caller caller, Clock clock) {
    this.notices = notices;
    this.surroundings = surroundings;
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
  }

  /**
   * @param told what the caller saw when the person was told; what came since stays open
   * @throws Problem when one of it is not the guardian's, or of another fitter's field
   */
  Answer reached(UUID guardian, Set<UUID> told, ReachedBy way, UUID commandId) {
    if (told.isEmpty()) {
      throw Problem.badRequest(
          "nothing-told",
          "Say which notices you told. Load the list again and press the button there.",
          new Problem.FieldError("notices", "Needed: one or more."));
    }
    String by = caller.id();
    List<UUID> sorted = List.copyOf(new TreeSet<>(told));
    return commands.once(
        commandId,
        "reach-person",
        Map.of("guardian", guardian, "notices", sorted, "way", way.code(), "by", by),
        () -> {
          sorted.forEach(notice -> reached(guardian, notice, way, by, commandId));
          return Answer.of(200, Map.of("guardian", guardian, "notices", sorted));
        });
  }

  /** What was confirmed or cancelled meanwhile needs nothing more, and is no mistake. */
  private void reached(UUID guardian, UUID notice, ReachedBy way, String by, UUID commandId) {
    NoticeRow row = NoticeRow.locked(notice);
    if (row == null || !row.recipient.equals(guardian.toString())) {
      throw Problem.notFound("This person has no such notice. Load the list again.");
    }
    if (!caller.isManager()
        && surroundings.fieldsOf(notice).stream().noneMatch(caller::mayWorkAt)) {
      throw Problem.otherField("This family is of another field. Its fitters look after it.");
    }
    notices.decide(
        notice,
        new NoticeCommand.Reach(way, by, clock.instant()),
        new Cause(commandId, row.correlationId, "reached-" + notice));
  }
}
