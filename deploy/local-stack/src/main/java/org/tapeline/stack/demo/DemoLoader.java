package org.tapeline.stack.demo;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Loads the demo season through the public endpoints, once. It can be run again after it broke off:
 * what was done before is not done twice.
 */
public final class DemoLoader {
  private static final ZoneId ZONE = ZoneId.of("America/Denver");
  private static final String MANAGER = "manager";

  private final Path season;
  private final Path marker;
  private final DemoHttp http;
  private final Consumer<String> say;

  public DemoLoader(Path root, Path data, int gateway, Consumer<String> say) {
    this.season = root.resolve("deploy/demo/larkfield-valley");
    this.marker = data.resolve("demo-loaded");
    this.http = new DemoHttp("http://127.0.0.1:" + gateway);
    this.say = say;
  }

  /** The demo could not be loaded; the message says where it stopped. */
  public static final class LoadFailure extends Exception {
    private static final long serialVersionUID = 1L;

    LoadFailure(IOException cause) {
      super("The demo season could not be loaded: " + cause.getMessage(), cause);
    }
  }

  public void load() throws LoadFailure {
    if (Files.exists(marker)) {
      return;
    }
    try {
      say.accept("  ..  demo         loading the Larkfield Valley season");
      imports();
      fitDays();
      readings();
      DemoHelmets helmets = new DemoHelmets(season.resolve("helmets.csv"));
      forecasts();
      List<DemoSessions.Fitted> fitted = new DemoSessions(http, helmets).run();
      new DemoMishaps(http).run(fitted);
      Files.writeString(marker, Instant.now().toString());
      say.accept(
          "  ok  demo         "
              + fitted.size()
              + " players fitted, one check failed, one helmet damaged, two on hold");
    } catch (IOException e) {
      throw new LoadFailure(e);
    }
  }

  private void imports() throws IOException {
    importFile("inventory", "places");
    importFile("inventory", "travel");
    importFile("sizing", "charts");
    importFile("sizing", "players");
    importFile("inventory", "helmets");
    importFile("inventory", "parts");
  }

  private void importFile(String service, String what) throws IOException {
    String csv = Files.readString(season.resolve(what + ".csv"));
    http.importCsv(MANAGER, "import-" + what, "/" + service + "/api/import/" + what, csv);
  }

  /** Two evenings a week at each field, for the next three weeks. */
  private void fitDays() throws IOException {
    LocalDate today = LocalDate.now(ZONE);
    List<String> fields = DemoFiles.column(season.resolve("places.csv"), "code", "kind", "field");
    DemoRetry retry = new DemoRetry();
    for (int i = 0; i < fields.size(); i++) {
      for (int week = 0; week < 3; week++) {
        for (int day : new int[] {2 + i % 3, 5 + i % 2}) {
          LocalDate date = today.plusDays(week * 7L + day);
          String field = fields.get(i);
          retry.untilKnown(
              () ->
                  http.post(
                      MANAGER,
                      "fit-day-" + field + date,
                      "/fitting/api/fit-days",
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
                          2)));
        }
      }
    }
  }

  private void readings() throws IOException {
    List<Map<String, String>> rows = DemoFiles.rows(season.resolve("readings.csv"));
    for (Map<String, String> row : rows) {
      List<String> readings = new ArrayList<>();
      for (String column : List.of("first", "second", "third")) {
        if (!row.getOrDefault(column, "").isBlank()) {
          readings.add(row.get(column));
        }
      }
      String number = row.get("player_number");
      http.post(
          MANAGER,
          "head-" + number,
          "/sizing/api/players/" + number + "/readings",
          Map.of("readings", readings));
    }
  }

  /**
   * How many of each size the season needs, published so that the warehouse sees it beside its
   * stock.
   */
  private void forecasts() throws IOException {
    for (String model : DemoFiles.values(season.resolve("charts.csv"), "model")) {
      http.post(
          MANAGER, "forecast-" + model, "/sizing/api/size-mix/" + model + "/publish", Map.of());
    }
  }

  static List<JsonNode> list(JsonNode array) {
    List<JsonNode> nodes = new ArrayList<>();
    for (Iterator<JsonNode> i = array.elements(); i.hasNext(); ) {
      nodes.add(i.next());
    }
    return nodes;
  }
}
