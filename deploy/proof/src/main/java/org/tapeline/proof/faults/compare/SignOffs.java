package org.tapeline.proof.faults.compare;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tapeline.proof.faults.process.Part;

/**
 * Who is signed off in which helmet, worked out anew from what was said in fitting and inventory: a
 * pass signs off; a fail, a suspected concussion, a helmet that was pulled, refused or given to
 * somebody else afterwards ends it. What comes first of a sign-off and a pull is said by fitting's
 * journal where inventory heard of the sign-off late.
 */
final class SignOffs implements Check {
  private static final String NAME = "sign-offs";
  private static final Set<String> PULLS =
      Set.of("helmet-quarantined", "helmet-held", "helmet-retired");
  private static final Set<String> ENDS = Set.of("fit-failed", "concussion-suspected");

  @Override
  public void look(Evidence evidence, Findings findings) throws SQLException {
    Map<String, Event> newest = new TreeMap<>();
    for (Event event : evidence.of(Part.FITTING, "signed-off")) {
      newest.put(event.text("player"), event);
    }
    HelmetLife helmets = HelmetLife.of(evidence);
    Map<String, Map<String, String>> rows = new HashMap<>();
    evidence
        .rows(Part.FITTING, "select player, state, tag, session, why from sign_off")
        .forEach(row -> rows.put(row.get("player"), row));
    for (Map.Entry<String, Event> each : newest.entrySet()) {
      Map<String, String> row = rows.getOrDefault(each.getKey(), Map.of());
      Optional<String> ended = ended(each.getValue(), evidence, helmets);
      String expected = ended.isPresent() ? "withdrawn" : "signed-off";
      String what = each.getValue() + ended.map(why -> ", ended by " + why).orElse("");
      findings.same(NAME, what, expected, row.getOrDefault("state", "none"));
      findings.same(NAME, what, each.getValue().text("tag"), row.getOrDefault("tag", "none"));
      if (ended.isEmpty()) {
        inHand(each.getKey(), each.getValue(), helmets, findings);
      }
    }
    findings.looked("players with a sign-off", newest.size());
    onceEach(evidence, findings);
  }

  /** A pass and its sign-off go together. */
  private static void onceEach(Evidence evidence, Findings findings) {
    List<String> signed =
        evidence.of(Part.FITTING, "signed-off").stream().map(e -> e.text("session")).toList();
    for (Event passed : evidence.of(Part.FITTING, "fit-passed")) {
      long times = signed.stream().filter(passed.text("session")::equals).count();
      if (times == 0) {
        findings.lost(NAME, passed + " signed nobody off");
      } else if (times > 1) {
        findings.doubled(NAME, passed + " signed off " + times + " times");
      }
    }
  }

  /** Whoever is signed off has that helmet by inventory's journal. */
  private static void inHand(
      String player, Event signedOff, HelmetLife helmets, Findings findings) {
    HelmetLife.Now now = helmets.all().get(signedOff.text("tag"));
    String what = "the helmet of " + signedOff;
    findings.same(
        NAME,
        what,
        "issued to " + player,
        now == null ? "unknown" : now.state() + " to " + now.holder());
  }

  /** What ended it, in words; empty when it holds. */
  private static Optional<String> ended(Event signedOff, Evidence evidence, HelmetLife helmets) {
    String player = signedOff.text("player");
    for (Event later : evidence.journal(Part.FITTING)) {
      if (later.position() > signedOff.position() && endsHere(later, player, signedOff)) {
        return Optional.of(later.toString());
      }
    }
    List<Event> history = helmets.history(signedOff.text("tag"));
    long issued =
        history.stream()
            .filter(e -> e.is("helmet-issued") && e.text("player").equals(player))
            .mapToLong(Event::version)
            .max()
            .orElse(Long.MAX_VALUE);
    return history.stream()
        .filter(
            e ->
                e.is("issue-refused") && e.text("session").equals(signedOff.text("session"))
                    || PULLS.contains(e.type())
                        && (e.version() > issued || heardLater(e, signedOff, evidence)))
        .map(Event::toString)
        .findFirst();
  }

  /**
   * Whether fitting heard of it only after the sign-off, and withdrew that: it may have come before
   * the sign-off came to inventory, and the helmet may have been inspected since.
   */
  private static boolean heardLater(Event pull, Event signedOff, Evidence evidence) {
    return evidence.of(Part.FITTING, "sign-off-withdrawn").stream()
        .anyMatch(
            e ->
                e.position() > signedOff.position()
                    && e.causation().equals(pull.id())
                    && e.text("player").equals(signedOff.text("player")));
  }

  private static boolean endsHere(Event later, String player, Event signedOff) {
    return ENDS.contains(later.type()) && later.text("player").equals(player)
        || later.is("pass-taken-back") && later.text("session").equals(signedOff.text("session"))
        || later.is("signed-off")
            && later.text("tag").equals(signedOff.text("tag"))
            && !later.text("player").equals(player);
  }
}
