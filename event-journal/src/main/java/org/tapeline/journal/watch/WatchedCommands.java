package org.tapeline.journal.watch;

import java.util.UUID;
import java.util.function.Supplier;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandLog;

/** A command log that somebody looks at. */
public record WatchedCommands(CommandLog log, JournalWatch watch) implements CommandLog {

  @Override
  public Answer once(UUID commandId, String command, Object body, Supplier<Answer> work) {
    return watch.command(commandId, kind(command), new Once(commandId, command, body, work));
  }

  /** What follows a slash is the thing that the command is for. */
  private static String kind(String command) {
    int slash = command.indexOf('/');
    return slash < 0 ? command : command.substring(0, slash);
  }

  private final class Once implements JournalWatch.Work {
    private final UUID id;
    private final String command;
    private final Object body;
    private final Supplier<Answer> work;
    private boolean worked;

    Once(UUID id, String command, Object body, Supplier<Answer> work) {
      this.id = id;
      this.command = command;
      this.body = body;
      this.work = work;
    }

    @Override
    public Answer get() {
      return log.once(
          id,
          command,
          body,
          () -> {
            worked = true;
            return work.get();
          });
    }

    @Override
    public boolean repeated() {
      return !worked;
    }
  }
}
