package org.tapeline.proof.fuzz.endpoint;

import java.util.List;
import java.util.Map;

/**
 * What an OpenAPI document does not say: the words and numbers that an address or a field may be.
 */
final class Words {
  static final Map<String, List<String>> OF =
      Map.ofEntries(
          Map.entry("airCelsius", List.of("20")),
          Map.entry("air", List.of("20", "68")),
          Map.entry("answer", List.of("pass", "fail")),
          Map.entry("axis", List.of("front-back", "sides", "crown-height", "chin-strap")),
          Map.entry("book", List.of("0", "3")),
          Map.entry("certifiedUntil", List.of("2028-08-01")),
          Map.entry("check", List.of("labels", "shell", "chin-strap")),
          Map.entry("closes", List.of("20:00")),
          Map.entry("confirmed", List.of("yes")),
          Map.entry("count", List.of("1", "12")),
          Map.entry("counted", List.of("0", "3")),
          Map.entry("date", List.of("2027-03-01")),
          Map.entry("day", List.of("2026-12-01")),
          Map.entry("finding", List.of("loose", "tight", "high", "low", "damaged", "other")),
          Map.entry("first", List.of("21 1/2 in")),
          Map.entry("fitters", List.of("2")),
          Map.entry("hair", List.of("usual", "braids")),
          Map.entry("language", List.of("en", "es")),
          Map.entry("madeFrom", List.of("2024-01-01")),
          Map.entry("manufacturedOn", List.of("2024-05-15")),
          Map.entry("minutesPerFit", List.of("15")),
          Map.entry("mode", List.of("all-or-none", "good-rows")),
          Map.entry("opens", List.of("17:30")),
          Map.entry("outcome", List.of("back-to-stock", "recertified", "rejected")),
          Map.entry("photo", List.of("no")),
          Map.entry("pieces", List.of("1", "12")),
          Map.entry("quantity", List.of("1", "2")),
          Map.entry("readings", List.of("21 1/2 in", "54.5 cm", "545 mm")),
          Map.entry(
              "reason",
              List.of("recall", "standards-notice", "own-finding", "brought-along", "delivered")),
          Map.entry("result", List.of("pass", "fail")),
          Map.entry("scope", List.of("whole", "lots", "tags")),
          Map.entry("second", List.of("54.6 cm")),
          Map.entry("sort", List.of("season", "hold")),
          Map.entry(
              "step",
              List.of(
                  "pick",
                  "ship",
                  "receive",
                  "cancel",
                  "pack",
                  "unpack",
                  "add",
                  "remove",
                  "send",
                  "close",
                  "give-up",
                  "certification",
                  "return",
                  "move",
                  "retire")),
          Map.entry("template", List.of("do-not-wear-dated")),
          Map.entry("tooFew", List.of("100")),
          Map.entry("tooMany", List.of("40")),
          Map.entry("unit", List.of("c", "f")),
          Map.entry("way", List.of("telephone", "sheet")),
          Map.entry(
              "what",
              List.of(
                  "players", "charts", "helmets", "parts", "places", "travel", "crack", "scratch")),
          Map.entry("where", List.of("shell", "liner", "chin-strap", "face-guard")),
          Map.entry(
              "why",
              List.of("age", "lost", "not-needed", "mistake", "wrong-button", "interrupted")));

  /** Fields that hold what elsewhere has another name. */
  private static final Map<String, String> SAME =
      Map.of(
          "from",
          "place",
          "to",
          "place",
          "tags",
          "tag",
          "lots",
          "lot",
          "notices",
          "notice",
          "sizeLabel",
          "size",
          "part",
          "item",
          "parts",
          "item");

  private Words() {}

  static String meant(String name) {
    return SAME.getOrDefault(name, name);
  }
}
