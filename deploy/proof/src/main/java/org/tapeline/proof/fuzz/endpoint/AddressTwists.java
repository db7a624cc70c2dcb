package org.tapeline.proof.fuzz.endpoint;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;

/** What can be wrong in the path, the query and the method. */
final class AddressTwists {
  private static final Predicate<Endpoint> WITH_ID = e -> !e.parametersIn("path").isEmpty();
  private static final Predicate<Endpoint> WITH_QUERY = e -> !e.parametersIn("query").isEmpty();
  private static final List<String> NOT_TEXT =
      List.of(
          "%C0%80", "%FF", "%ED%A0%80", "%F8%88%80%80%80", "%zz", "%", "%u0041", "%2F", "%2e%2e");
  private static final List<String> METHODS =
      List.of("GET", "POST", "PUT", "PATCH", "DELETE", "HEAD", "OPTIONS", "TRACE", "BREW");

  private AddressTwists() {}

  static List<Twist> all(Known known) {
    return List.of(
        new Twist("an id of another kind", WITH_ID, (d, r) -> inPath(d, r, known.other(r))),
        new Twist(
            "an id that does not exist", WITH_ID, (d, r) -> inPath(d, r, unknownId(r).toString())),
        new Twist("an odd id", WITH_ID, (d, r) -> inPath(d, r, Oddities.text(r))),
        new Twist("an id that is no text", WITH_ID, AddressTwists::noText),
        new Twist("an odd query value", WITH_QUERY, (d, r) -> inQuery(d, r, Oddities.text(r))),
        new Twist(
            "an odd date in the query", WITH_QUERY, (d, r) -> inQuery(d, r, Oddities.date(r))),
        new Twist("another kind in the query", WITH_QUERY, (d, r) -> inQuery(d, r, known.other(r))),
        new Twist("a query that is no text", e -> true, AddressTwists::brokenQuery),
        new Twist("a parameter twice and one too many", e -> true, AddressTwists::twice),
        new Twist("another method", e -> true, (d, r) -> d.method = Oddities.pick(METHODS, r)),
        new Twist("a path that goes on", e -> true, AddressTwists::goesOn));
  }

  private static UUID unknownId(RandomGenerator random) {
    return new UUID(random.nextLong() & ~0xf000L | 0x7000L, random.nextLong() >>> 1 | 1L << 63);
  }

  private static void inPath(Draft draft, RandomGenerator random, String value) {
    draft.path.put(Oddities.pick(draft.endpoint.parametersIn("path"), random), value);
  }

  private static void noText(Draft draft, RandomGenerator random) {
    String name = Oddities.pick(draft.endpoint.parametersIn("path"), random);
    String path = draft.endpoint.path().replace("{" + name + "}", Oddities.pick(NOT_TEXT, random));
    for (Map.Entry<String, String> part : draft.path.entrySet()) {
      path = path.replace("{" + part.getKey() + "}", Encoded.percent(part.getValue()));
    }
    draft.target = path;
    draft.broken = true;
  }

  private static void inQuery(Draft draft, RandomGenerator random, String value) {
    String name = Oddities.pick(draft.endpoint.parametersIn("query"), random);
    draft.query.removeIf(q -> q.getKey().equals(name));
    draft.query.add(Map.entry(name, value));
  }

  private static void brokenQuery(Draft draft, RandomGenerator random) {
    List<String> names = draft.endpoint.parametersIn("query");
    String name = names.isEmpty() ? "q" : Oddities.pick(names, random);
    goTo(draft, "?" + name + "=" + Oddities.pick(NOT_TEXT, random) + "&&=&" + name);
    draft.broken = true;
  }

  private static void twice(Draft draft, RandomGenerator random) {
    List<String> names = draft.endpoint.parametersIn("query");
    String name = names.isEmpty() ? "extra" : Oddities.pick(names, random);
    draft.query.add(Map.entry(name, Oddities.text(random)));
    draft.query.add(Map.entry(name, Oddities.text(random)));
    draft.query.add(Map.entry("nobody-knows", Oddities.text(random)));
  }

  private static void goesOn(Draft draft, RandomGenerator random) {
    List<String> ends =
        List.of("/", "//", "/../", ";a=b", "/%00", "/" + "a/".repeat(500), "?", "#x");
    goTo(draft, Oddities.pick(ends, random));
    draft.broken = true;
  }

  private static void goTo(Draft draft, String end) {
    String path = draft.endpoint.path();
    for (Map.Entry<String, String> part : draft.path.entrySet()) {
      path = path.replace("{" + part.getKey() + "}", Encoded.percent(part.getValue()));
    }
    draft.target = path + end;
  }
}
