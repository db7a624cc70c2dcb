package org.tapeline.inventory.whole;

import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.importing;

import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** What people do with the shelves of parts. */
final class Shelves {
  private static final AtomicInteger NEXT = new AtomicInteger();

  private Shelves() {}

  /** A part that no other test uses. */
  static String freshPart() {
    return "part-t" + NEXT.incrementAndGet();
  }

  static void opening(String place, String item, int pieces) {
    importing(
            "parts",
            "all-or-none",
            "place,item,model,quantity\n" + place + "," + item + ",," + pieces + "\n")
        .statusCode(200);
  }

  /** What the books say of a part at a place, for all models together. */
  static int pieces(String place, String item) {
    List<Map<String, Object>> lines =
        as("depot").queryParam("place", place).get("/api/stock").then().extract().path("$");
    return lines.stream()
        .filter(l -> l.get("item").equals(item))
        .mapToInt(l -> (Integer) l.get("pieces"))
        .sum();
  }

  static ValidatableResponse count(
      String user, String place, String item, int counted, int book, String reason) {
    String body =
        """
        {"place":"%s","lines":[
          {"item":"%s","model":"","counted":%d,"book":%d,"reason":"%s"}]}
        """
            .formatted(place, item, counted, book, reason);
    return commandOf(user)
        .contentType("application/json")
        .body(body)
        .post("/api/stock/counts")
        .then();
  }

  static ValidatableResponse move(
      String from, String to, String item, int quantity, String reason) {
    String body =
        """
        {"from":"%s","to":"%s","item":"%s","model":"","quantity":%d,"reason":"%s"}
        """
            .formatted(from, to, item, quantity, reason);
    return commandOf("depot")
        .contentType("application/json")
        .body(body)
        .post("/api/stock/moves")
        .then();
  }
}
