package org.tapeline.proof.faults.compare;

import com.fasterxml.jackson.databind.JsonNode;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.tapeline.proof.faults.process.Part;

/** Pieces in the books sum up to nothing, and at each place to what the journal says. */
final class Books implements Check {
  private static final String NAME = "stock";

  @Override
  public void look(Evidence evidence, Findings findings) throws SQLException {
    for (Map<String, String> row :
        evidence.rows(
            Part.INVENTORY,
            "select item, model, sum(amount) from ledger_entry group by 1, 2"
                + " having sum(amount) <> 0")) {
      findings.differing(NAME, "out of balance: " + row);
    }
    Map<String, Integer> expected = new TreeMap<>();
    Map<String, Event> requests = new HashMap<>();
    for (Event event : evidence.journal(Part.INVENTORY)) {
      book(event, requests, expected);
    }
    Map<String, Integer> found = new TreeMap<>();
    evidence
        .rows(
            Part.INVENTORY,
            "select account, item, sum(amount) as pieces from ledger_entry"
                + " where account like 'place:%' group by 1, 2")
        .forEach(
            row ->
                found.put(
                    row.get("account").substring("place:".length()) + " " + row.get("item"),
                    Integer.parseInt(row.get("pieces"))));
    expected.forEach(
        (line, pieces) ->
            findings.same(NAME, "pieces of " + line, pieces, found.getOrDefault(line, 0)));
    findings.looked("shelves in the books", found.size());
  }

  private static void book(Event e, Map<String, Event> requests, Map<String, Integer> shelves) {
    switch (e.type()) {
      case "stock-counted" -> add(shelves, e.text("place"), e.text("item"), e.number("variance"));
      case "part-used" -> add(shelves, e.text("place"), e.text("item"), -e.number("quantity"));
      case "part-moved" -> {
        add(shelves, place(e.text("from")), e.text("item"), -e.number("quantity"));
        add(shelves, place(e.text("to")), e.text("item"), e.number("quantity"));
      }
      case "restock-requested" -> requests.putIfAbsent(e.text("request"), e);
      case "restock-received" -> received(e, requests.get(e.text("request")), shelves);
      default -> {
        // Nothing else moves a piece.
      }
    }
  }

  private static void received(Event e, Event request, Map<String, Integer> shelves) {
    if (request == null || request.text("item").startsWith("helmet:")) {
      return;
    }
    String item = request.text("item");
    add(shelves, e.text("place"), item, e.number("quantity"));
    JsonNode from = request.data().path("fromPlace");
    if (!from.isMissingNode()) {
      add(shelves, from.asText(), item, -e.number("quantity") - e.number("damaged"));
    }
  }

  private static String place(String account) {
    return account.startsWith("place:") ? account.substring("place:".length()) : "";
  }

  private static void add(Map<String, Integer> shelves, String place, String item, int pieces) {
    if (!place.isEmpty()) {
      shelves.merge(place + " " + item, pieces, Integer::sum);
    }
  }
}
