package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.journal.Cause;
import org.tapeline.journal.UuidV7;
import org.tapeline.sizing.csv.CsvFile;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer;
import org.tapeline.sizing.csv.ImportAnswer.RowError;
import org.tapeline.sizing.roster.PlayerCommand.PutOnRoster;

/** Players with their guardians from CSV. */
@ApplicationScoped
public class RosterImport {
  /** Each query looks through all rows in memory, so that a long file must not pile them up. */
  private static final int ROWS_IN_MEMORY = 100;

  private final Players players;
  private final People people;
  private final Clock clock;
  private final String region;

  RosterImport(
      Players players,
      People people,
      Clock clock,
      @ConfigProperty(name = "tapeline.phone-region", defaultValue = "US") String region) {
    this.players = players;
    this.people = people;
    this.clock = clock;
    this.region = region;
  }

  /** In the caller's transaction. */
  public ImportAnswer run(String csv, ImportAnswer.Mode mode, Cause cause) {
    List<RowError> errors = new ArrayList<>();
    List<RowError> notes = new ArrayList<>();
    List<RosterLine> good = new ArrayList<>();
    List<Row> rows = CsvFile.read(csv, RosterLine.COLUMNS).rows();
    Set<String> numbers = new HashSet<>();
    LocalDate today = LocalDate.now(clock);
    for (Row row : rows) {
      int before = errors.size();
      RosterLine line = RosterLine.of(row, today, region, errors, notes);
      if (!numbers.add(line.number())) {
        errors.add(row.error("player_number", "Stands twice in the file."));
      }
      if (errors.size() == before) {
        good.add(line);
      }
    }
    if (!errors.isEmpty() && mode == ImportAnswer.Mode.ALL_OR_NONE) {
      return new ImportAnswer(0, 0, rows.size(), errors, notes);
    }
    int changed = keepAll(good, cause);
    return new ImportAnswer(
        changed, good.size() - changed, rows.size() - good.size(), errors, notes);
  }

  private int keepAll(List<RosterLine> lines, Cause cause) {
    int changed = 0;
    for (int i = 0; i < lines.size(); i++) {
      changed += keep(lines.get(i), cause) ? 1 : 0;
      if (i % ROWS_IN_MEMORY == ROWS_IN_MEMORY - 1) {
        PlayerRow.flush();
        PlayerRow.getEntityManager().clear();
      }
    }
    return changed;
  }

  private boolean keep(RosterLine line, Cause cause) {
    UUID id = idOf(line.number());
    boolean changed = people.keep(id, line);
    PutOnRoster put = new PutOnRoster(id, line.number(), line.team(), line.field());
    return !players.handle(put, cause.step("roster")).isEmpty() || changed;
  }

  private static UUID idOf(String number) {
    RosterNumber known = RosterNumber.findById(number);
    if (known == null) {
      known = new RosterNumber();
      known.number = number;
      known.player = UuidV7.next();
      known.persistAndFlush();
    }
    return known.player;
  }
}
