package org.tapeline.proof.faults.season;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;

/** What a season begins with: places, charts, the roster, helmets, parts and fit days. */
public final class Preparation {
  private static final int PATIENCE_TRIES = 100;

  private final StackPlace place;
  private final Gate gate;
  private final long seed;

  public Preparation(StackPlace place, Gate gate, long seed) {
    this.place = place;
    this.gate = gate;
    this.seed = seed;
  }

  private Path file(String what) {
    return place.root().resolve("deploy/demo/larkfield-valley/" + what + ".csv");
  }

  /**
   * @throws IOException when the files cannot be read or something is refused
   */
  public Season season() throws IOException {
    Random random = new Random(seed);
    take(Part.INVENTORY, "places", "place-listed", random);
    take(Part.INVENTORY, "travel", "place-listed", random);
    take(Part.SIZING, "charts", "chart-published", random);
    take(Part.SIZING, "players", "player-enrolled", random);
    take(Part.INVENTORY, "helmets", "helmet-received", random);
    take(Part.INVENTORY, "parts", "stock-counted", random);
    People people = people(random);
    Fitting fitting = new Fitting(checks());
    fitDays(random);
    Families families = new Families(place.data().resolve("mail"));
    return new Season(gate, people, fitting, families, seed);
  }

  private void take(Part service, String what, String event, Random random) throws IOException {
    Command command =
        Command.json(
                Ids.next(random),
                what.equals("players") ? "roster import" : "import of " + what,
                service,
                "manager",
                "import/" + what,
                Files.readString(file(what)),
                what)
            .asCsv();
    long rows = rows(what).size();
    // Ways are told with their places, and sizes with their chart: how often is not the rows.
    boolean one = List.of("players", "helmets", "parts").contains(what);
    Command all = one ? command.leadingTo(event, (int) rows) : command;
    if (!gate.send(all, random).accepted()) {
      throw new IOException("The import of " + what + " was refused");
    }
  }

  private List<Map<String, String>> rows(String what) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader = Files.newBufferedReader(file(what));
        CSVParser parser = CSVParser.parse(reader, format)) {
      return parser.stream().map(row -> row.toMap()).toList();
    }
  }

  private People people(Random random) throws IOException {
    Map<String, Map<String, String>> rows = new HashMap<>();
    rows("players").forEach(row -> rows.put(row.get("player_number"), row));
    List<String> columns = columns();
    People people = new People();
    for (JsonNode view : awaited("/sizing/api/players")) {
      Map<String, String> row = rows.get(view.get("number").asText());
      Map<String, String> ordered = new LinkedHashMap<>();
      columns.forEach(column -> ordered.put(column, row.get(column)));
      people.add(view, ordered, random);
    }
    return people;
  }

  private List<String> columns() throws IOException {
    try (var lines = Files.lines(file("players"))) {
      return List.of(lines.findFirst().orElseThrow().split(","));
    }
  }

  private List<String> checks() throws IOException {
    JsonNode protocol = awaited("/fitting/api/protocol");
    return StreamSupport.stream(protocol.get("checks").spliterator(), false)
        .map(check -> check.get("id").asText())
        .toList();
  }

  private JsonNode awaited(String address) throws IOException {
    for (int tries = 0; tries < PATIENCE_TRIES; tries++) {
      try {
        return gate.look("manager", address);
      } catch (Gate.Away e) {
        StackPlace.rest(Duration.ofMillis(200));
      }
    }
    throw new IOException(address + " does not answer");
  }

  /** Two evenings a week at each field, for three weeks. */
  private void fitDays(Random random) throws IOException {
    LocalDate today = LocalDate.now();
    for (String field : List.of("NORTH", "RIVER", "SOUTH")) {
      for (int day = 3; day < 24; day += 4) {
        announce(field, today.plusDays(day), random);
      }
    }
  }

  /** The field is news to fitting for a moment: until it is known, the day is refused. */
  private void announce(String field, LocalDate date, Random random) throws IOException {
    Map<String, Object> body =
        Map.of(
            "field",
            field,
            "date",
            date.toString(),
            "opens",
            "17:30",
            "closes",
            "20:00",
            "fitters",
            2);
    for (int tries = 0; tries < PATIENCE_TRIES; tries++) {
      Command command =
          Command.json(
              Ids.next(random),
              "fit day",
              Part.FITTING,
              "manager",
              "fit-days",
              Gate.json(body),
              field + " " + date);
      if (gate.send(command.leadingTo("fit-day-announced"), random).accepted()) {
        return;
      }
      StackPlace.rest(Duration.ofMillis(200));
    }
    throw new IOException("No fit day could be announced at " + field);
  }
}
