package org.tapeline.proof.fuzz.shown;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.tapeline.proof.fuzz.wire.Answer;
import org.tapeline.proof.fuzz.wire.Call;
import org.tapeline.proof.fuzz.wire.Header;
import org.tapeline.proof.fuzz.wire.Wire;

/**
 * Follows every link from page to page and looks for markup that came from data, and in every table
 * that is downloaded for cells that a spreadsheet would reckon with.
 */
public final class PageWalk {
  /** Of pages that differ only in an id so many. */
  private static final int ALIKE = 4;

  private static final Set<String> NOT_FOLLOWED = Set.of("/sign-out", "/sizing/sign-out");

  private final Wire wire;
  private final int port;
  private final String login;
  private final BiConsumer<String, String> wrong;
  private final Deque<String> waiting = new ArrayDeque<>();
  private final Set<String> seen = new HashSet<>();
  private final Map<String, Integer> alike = new HashMap<>();

  /**
   * @param wrong is told the address and what is wrong there
   */
  public PageWalk(Wire wire, int port, String login, BiConsumer<String, String> wrong) {
    this.wire = wire;
    this.port = port;
    this.login = login;
    this.wrong = wrong;
  }

  /** How many pages and tables were looked at, and in how many of them a mark was shown as text. */
  public record Seen(int pages, int tables, int others, int marked) {}

  /**
   * @param starts where to begin
   * @param most pages at most
   */
  public Seen walk(List<String> starts, int most) throws IOException {
    starts.forEach(this::add);
    int pages = 0;
    int tables = 0;
    int others = 0;
    int marked = 0;
    while (!waiting.isEmpty() && pages + tables + others < most) {
      String path = waiting.pop();
      Answer answer = get(path);
      if (answer.status() >= 500 || !answer.whole()) {
        wrong.accept(path, "status " + answer.status());
      }
      if (answer.text().contains(Marked.NAME)) {
        marked++;
      }
      switch (answer.type()) {
        case "text/html" -> {
          pages++;
          page(path, answer);
        }
        case "text/csv" -> {
          tables++;
          table(path, answer.text());
        }
        default -> others++;
      }
    }
    return new Seen(pages, tables, others, marked);
  }

  private Answer get(String path) throws IOException {
    return wire.send(
        new Call(
            port,
            "GET",
            path,
            List.of(new Header("Authorization", login), new Header("Accept", "text/html,*/*")),
            new byte[0]));
  }

  private void add(String path) {
    String bare = path.replaceFirst("#.*", "");
    String shape =
        bare.replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "ID")
            .replaceAll("/LV[0-9A-Z]+", "/TAG")
            .replaceAll("=[^&]*", "=")
            .replaceAll("[0-9]+", "N");
    boolean wanted =
        bare.startsWith("/")
            && !bare.startsWith("//")
            && !NOT_FOLLOWED.contains(bare)
            && alike.getOrDefault(shape, 0) < ALIKE;
    if (wanted && seen.add(bare)) {
      alike.merge(shape, 1, Integer::sum);
      waiting.add(bare);
    }
  }

  private void page(String path, Answer answer) {
    Document page = Jsoup.parse(answer.text(), "http://localhost" + path);
    for (Element element : page.getAllElements()) {
      if (element.normalName().equals(Marked.NAME) || element.hasAttr(Marked.NAME)) {
        wrong.accept(path, "markup from data became part of the page: " + element.cssSelector());
        return;
      }
    }
    for (Element link : page.select("a[href], iframe[src]")) {
      String to = link.hasAttr("href") ? link.absUrl("href") : link.absUrl("src");
      if (to.startsWith("http://localhost/") || to.startsWith("http://localhost:" + port + "/")) {
        add(to.replaceFirst("^http://localhost(:[0-9]+)?", ""));
      } else if (to.toLowerCase(java.util.Locale.ROOT).startsWith("javascript:")) {
        wrong.accept(path, "a link runs a script");
      }
    }
  }

  private void table(String path, String csv) throws IOException {
    try (CSVParser rows = CSVParser.parse(new StringReader(csv), CSVFormat.RFC4180)) {
      for (CSVRecord row : rows) {
        for (String cell : row) {
          if (Formula.is(cell)) {
            wrong.accept(path, "a cell that a spreadsheet takes for a formula: " + cell);
            return;
          }
        }
      }
    }
  }
}
