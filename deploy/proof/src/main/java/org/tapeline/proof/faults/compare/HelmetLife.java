package org.tapeline.proof.faults.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tapeline.proof.faults.process.Part;

/**
 * Where each helmet is, by inventory's journal alone: a small fold that shares nothing with the
 * services.
 */
final class HelmetLife {
  private static final String NOBODY = "";

  private final Map<String, Now> helmets = new TreeMap<>();
  private final Map<String, List<Event>> histories = new TreeMap<>();

  /**
   * A helmet now.
   *
   * @param holder the player who has it; empty for nobody
   */
  record Now(String state, String holder, String place) {
    Now state(String other) {
      return new Now(other, NOBODY, place);
    }

    Now at(String other) {
      return other.isEmpty() ? this : new Now(state, holder, other);
    }
  }

  static HelmetLife of(Evidence evidence) {
    HelmetLife life = new HelmetLife();
    evidence.journal(Part.INVENTORY).stream()
        .filter(event -> event.stream().startsWith("helmet-"))
        .forEach(life::add);
    return life;
  }

  Map<String, Now> all() {
    return helmets;
  }

  /** The helmet's events, oldest first. */
  List<Event> history(String tag) {
    return histories.getOrDefault(tag, List.of());
  }

  private void add(Event e) {
    String tag = e.text("tag");
    histories.computeIfAbsent(tag, t -> new ArrayList<>()).add(e);
    Now before = helmets.getOrDefault(tag, new Now("ordered", NOBODY, ""));
    helmets.put(tag, after(before, e));
  }

  private static Now after(Now before, Event e) {
    return switch (e.type()) {
      case "helmet-received", "helmet-returned" -> before.state("available").at(e.text("place"));
      case "helmet-issued" ->
          new Now("issued", e.text("player"), before.place()).at(e.text("place"));
      case "helmet-moved" -> before.at(e.text("to"));
      case "helmet-quarantined" -> before.state("quarantined").at(e.text("place"));
      case "helmet-inspected" ->
          e.text("outcome").equals("back-to-stock") ? before.state(or(e, "available")) : before;
      case "helmet-held", "helmet-freed", "helmet-came-back" ->
          before.state(or(e, before.state())).at(e.text("place"));
      case "helmet-sent-out" -> before.state("at-reconditioner");
      case "helmet-retired" -> before.state("retired");
      default -> before;
    };
  }

  private static String or(Event e, String otherwise) {
    return e.text("state").isEmpty() ? otherwise : e.text("state");
  }
}
