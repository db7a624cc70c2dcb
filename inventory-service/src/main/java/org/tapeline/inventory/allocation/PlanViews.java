package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.tapeline.inventory.allocation.PlanWish.Bought;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.Words;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.quarkus.http.Problem;

/** Plans as pages show them. */
@ApplicationScoped
public class PlanViews {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("EEE, MMM d, h:mm a", Locale.US);

  private final PlanStore store;
  private final PlanMaking making;
  private final Places places;
  private final Database database;

  PlanViews(PlanStore store, PlanMaking making, Places places, Database database) {
    this.store = store;
    this.making = making;
    this.places = places;
    this.database = database;
  }

  /**
   * A plan on a page.
   *
   * @param changed the facts are others than when it was made; only looked at for drafts
   */
  public record View(
      Plan plan,
      String about,
      String made,
      String until,
      List<String> limits,
      List<PlanLine> lines,
      List<Journey> journeys,
      List<Reason> left,
      boolean changed) {

    public boolean isForPlayers() {
      return plan.wish().forPlayers();
    }

    public long travelling() {
      return lines.stream().filter(PlanLine::isTravelling).count();
    }

    public long secondBest() {
      return lines.stream().filter(PlanLine::isSecondBest).count();
    }

    public long count(String outcome) {
      return lines.stream().filter(l -> l.outcome().equals(Optional.of(outcome))).count();
    }
  }

  /** Helmets that go the same way. */
  public record Journey(String from, String to, int helmets) {}

  /** A plan in the list. */
  public record Entry(Plan plan, String about, String made) {}

  List<Entry> newest(int limit) {
    return store.newest(limit).stream()
        .map(plan -> new Entry(plan, about(plan.wish()), when(plan)))
        .toList();
  }

  /**
   * @throws Problem when there is no such plan
   */
  View one(UUID id) {
    Plan plan = store.find(id).orElseThrow(() -> Problem.notFound("There is no plan " + id + "."));
    List<PlanLine> lines = store.lines(id);
    return new View(
        plan,
        about(plan.wish()),
        when(plan),
        plan.keptUntil().map(at -> WHEN.format(at.atZone(places.officeZone()))).orElse(""),
        limits(plan.wish()),
        lines,
        journeys(lines),
        store.left(id),
        plan.isDraft() && !making.fingerprint(plan.wish()).equals(plan.fingerprint()));
  }

  private String when(Plan plan) {
    return WHEN.format(plan.madeAt().atZone(places.officeZone()));
  }

  private static String about(PlanWish wish) {
    String at = wish.about().isEmpty() ? "all fields" : wish.about();
    return switch (wish.sort()) {
      case HOLD ->
          wish.about().isEmpty()
              ? "Players whose helmets are replaced"
              : "Players of the hold " + wish.about();
      case CASES -> "Re-fit cases that wait, " + at;
      case SEASON -> "Hand-out before the season, " + at;
      case EVEN_OUT -> "Spares evened out, " + at;
    };
  }

  private static List<String> limits(PlanWish wish) {
    List<String> limits = new ArrayList<>();
    wish.without().forEach(place -> limits.add("Without the helmets at " + place));
    for (Bought b : wish.bought()) {
      limits.add("With " + b.pieces() + " more of " + Reasons.name(b.kind()) + " at " + b.place());
    }
    limits.add(wish.otherModels() ? "Other models allowed" : "No other models");
    return limits;
  }

  private static List<Journey> journeys(List<PlanLine> lines) {
    Map<String, Map<String, Integer>> counts = new TreeMap<>();
    for (PlanLine line : lines) {
      if (line.isTravelling()) {
        counts
            .computeIfAbsent(line.place(), p -> new TreeMap<>())
            .merge(line.field(), 1, Integer::sum);
      }
    }
    List<Journey> journeys = new ArrayList<>();
    counts.forEach((from, to) -> to.forEach((t, n) -> journeys.add(new Journey(from, t, n))));
    return journeys;
  }

  /** Something to choose: a kind of helmet, or a hold. */
  public record Choice(String code, String said) {}

  List<Choice> kinds() {
    return database.list(
        "select distinct model, size from helmet order by 1, 2",
        row ->
            new Choice(
                row.getString(1) + ":" + row.getString(2),
                Words.model(row.getString(1)) + ", " + Words.code(row.getString(2))));
  }

  List<Choice> openHolds() {
    return database.list(
        "select hold::text, reference, matching from hold where open order by placed_at desc",
        row -> new Choice(row.getString(1), row.getString(2) + ", " + row.getInt(3) + " helmets"));
  }
}
