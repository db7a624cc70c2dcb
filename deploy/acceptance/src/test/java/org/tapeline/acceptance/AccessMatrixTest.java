package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.acceptance.AccessAsk.Answer;
import org.tapeline.acceptance.AccessRow.Cell;

@DisplayName("Who may do what")
class AccessMatrixTest {
  private static final AccessMatrix MATRIX = AccessMatrix.load();
  private static final int AT_A_TIME = 4;

  private static AccessSubjects own;
  private static AccessSubjects others;
  private static AccessNames names;

  @BeforeAll
  static void gather() {
    own = AccessSubjects.at("NORTH", "U10-HAWKS", "fitter.north");
    others = AccessSubjects.at("SOUTH", "U10-FOXES", "fitter.south");
    names = new AccessNames();
  }

  @AfterAll
  static void putAway() {
    own.close();
    others.close();
  }

  @Test
  @DisplayName("is decided for every endpoint of the running services, and for nothing else")
  void everyEndpoint() {
    assertThat(MATRIX.rows().stream().map(AccessRow::endpoint))
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(described());
  }

  private static Set<String> described() {
    Set<String> endpoints = new TreeSet<>();
    for (String service : AccessMatrix.SERVICES) {
      JsonNode paths = Raw.described(service).path("paths");
      paths.properties().forEach(path -> endpoints.addAll(of(path.getKey(), path.getValue())));
    }
    return endpoints;
  }

  private static List<String> of(String path, JsonNode operations) {
    return operations.properties().stream()
        .map(operation -> operation.getKey().toUpperCase(Locale.ROOT) + " " + path)
        .toList();
  }

  @Test
  @DisplayName("holds in every cell: role by endpoint, for what is own and for what is another's")
  void everyCell() throws Exception {
    try (ExecutorService threads = Executors.newFixedThreadPool(AT_A_TIME)) {
      List<Future<List<String>>> rows =
          MATRIX.rows().stream().map(row -> threads.submit(() -> wrongIn(row))).toList();
      List<String> wrong = new ArrayList<>();
      for (Future<List<String>> row : rows) {
        wrong.addAll(row.get());
      }
      assertThat(wrong).isEmpty();
    }
  }

  private static List<String> wrongIn(AccessRow row) {
    return Stream.of(AccessRole.values())
        .flatMap(role -> wrongIn(row, role).map(wrong -> row.endpoint() + " " + wrong))
        .toList();
  }

  private static Stream<String> wrongIn(AccessRow row, AccessRole role) {
    Cell cell = row.cells().get(role);
    Stream<String> wrong = tried(row, role, own, cell);
    return cell == Cell.OWN && row.scoped()
        ? Stream.concat(wrong, triedOnAnothers(row, role))
        : wrong;
  }

  private static Stream<String> tried(
      AccessRow row, AccessRole role, AccessSubjects subjects, Cell cell) {
    boolean letIn = cell == Cell.YES || cell == Cell.OWN;
    Answer answer = AccessAsk.ask(row, role, subjects.values(row.about()), letIn);
    boolean right =
        switch (cell) {
          case NO -> role == AccessRole.NOBODY ? answer.asksToSignIn() : answer.status() == 403;
          case YES -> letIn(answer);
          case OWN -> letIn(answer) && (!row.scoped() || !answer.hides());
          case LINK -> answer.status() == 404 || answer.status() == 401;
        };
    return Stream.concat(
        right ? Stream.empty() : said(role, cell.shown(), answer), names(role, answer));
  }

  private static Stream<String> triedOnAnothers(AccessRow row, AccessRole role) {
    Answer answer = AccessAsk.ask(row, role, others.values(row.about()), false);
    return Stream.concat(
        answer.hides() ? Stream.empty() : said(role, "another's", answer),
        names(role, answer.without(others.values(row.about()).values())));
  }

  private static boolean letIn(Answer answer) {
    return !answer.asksToSignIn() && answer.status() != 403 && answer.status() < 500;
  }

  private static Stream<String> said(AccessRole role, String wanted, Answer answer) {
    String text = answer.text().replaceAll("\\s+", " ");
    return Stream.of(
        role.said()
            + " ("
            + wanted
            + "): "
            + answer.status()
            + " "
            + answer.location()
            + " "
            + text.substring(0, Math.min(160, text.length())));
  }

  private static Stream<String> names(AccessRole role, Answer answer) {
    return names.othersIn(answer.text(), role).stream()
        .map(other -> role.said() + " was told of " + other);
  }

  @Test
  @DisplayName("is shown in the docs as it is")
  void docsAreCurrent() throws IOException {
    Path page = Tapeline.ROOT.resolve("docs/access.md");
    String text = Files.readString(page);
    String before = text.substring(0, text.indexOf(BEGIN) + BEGIN.length());
    String after = text.substring(text.indexOf(END));
    String current = before + "\n" + MATRIX.markdown() + after;
    if (System.getenv("TAPELINE_WRITE_DOCS") != null) {
      Files.writeString(page, current);
    }
    assertThat(text)
        .as("docs/access.md; TAPELINE_WRITE_DOCS=yes on this test writes it anew")
        .isEqualTo(current);
  }

  private static final String BEGIN = "<!-- the table, from access-matrix.txt -->";
  private static final String END = "<!-- end of the table -->";
}
