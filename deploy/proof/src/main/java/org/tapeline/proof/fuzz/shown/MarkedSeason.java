package org.tapeline.proof.fuzz.shown;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.proof.fuzz.wire.Answer;
import org.tapeline.proof.fuzz.wire.Call;
import org.tapeline.proof.fuzz.wire.Header;
import org.tapeline.proof.fuzz.wire.Wire;

/** Brings marked texts into every column of every file that can be imported. */
public final class MarkedSeason {
  private static final Map<String, String> SERVICES =
      Map.of(
          "players",
          "sizing",
          "charts",
          "sizing",
          "helmets",
          "inventory",
          "parts",
          "inventory",
          "places",
          "inventory");

  /** The column that says which row it is: it gets a fresh value each time. */
  private static final String NUMBER = "player_number";

  private final Wire wire;
  private final int port;
  private final String login;

  public MarkedSeason(Wire wire, int port, String login) {
    this.wire = wire;
    this.port = port;
    this.login = login;
  }

  /**
   * What the imports said.
   *
   * @param taken rows that were taken with a mark in them
   * @param refused rows that were refused for it
   * @param wrong answers other than 200 and 4xx
   */
  public record Outcome(int taken, int refused, List<String> wrong) {}

  /**
   * @param files of the demo, by what they hold
   */
  public Outcome bring(Map<String, String> files) throws IOException {
    int taken = 0;
    int refused = 0;
    List<String> wrong = new ArrayList<>();
    List<String> marks = new ArrayList<>(Marked.MARKUP);
    marks.addAll(Marked.FORMULAS);
    marks.addAll(Marked.LINES);
    for (Map.Entry<String, String> service : SERVICES.entrySet()) {
      String path = "/" + service.getValue() + "/api/import/" + service.getKey();
      List<String> lines = files.get(service.getKey()).lines().toList();
      String[] header = lines.get(0).split(",", -1);
      for (int column = 0; column < header.length; column++) {
        String csv = marked(lines, header, column, marks);
        Answer answer = send(path + "?mode=good-rows", csv);
        if (answer.status() == 200) {
          taken += number(answer.text(), "accepted");
          refused += number(answer.text(), "rejected");
        } else if (answer.status() / 100 != 4) {
          wrong.add(path + " answered " + answer.status() + " to marks in " + header[column]);
        }
      }
    }
    return new Outcome(taken, refused, wrong);
  }

  private static String marked(
      List<String> lines, String[] header, int column, List<String> marks) {
    StringBuilder csv = new StringBuilder(lines.get(0)).append('\n');
    for (int i = 0; i < marks.size(); i++) {
      String[] cells = lines.get(1 + i % (lines.size() - 1)).split(",", -1);
      for (int c = 0; c < cells.length; c++) {
        if (header[c].equals(NUMBER)) {
          cells[c] =
              "MK-"
                  + UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
        }
      }
      cells[column] = "\"" + marks.get(i).replace("\"", "\"\"") + "\"";
      csv.append(String.join(",", cells)).append('\n');
    }
    return csv.toString();
  }

  private Answer send(String path, String csv) throws IOException {
    return wire.send(
        new Call(
            port,
            "POST",
            path,
            List.of(
                new Header("Authorization", login),
                new Header("Idempotency-Key", UUID.randomUUID().toString()),
                new Header("Content-Type", "text/csv")),
            csv.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
  }

  private static int number(String json, String field) {
    String digits = json.replaceFirst("(?s).*\"" + field + "\":([0-9]+).*", "$1");
    return digits.matches("[0-9]{1,6}") ? Integer.parseInt(digits) : 0;
  }
}
