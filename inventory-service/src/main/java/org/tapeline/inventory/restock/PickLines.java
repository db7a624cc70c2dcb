package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.journal.UuidV7;

/** What is to be taken from the shelves of a place, and what has been taken. */
@ApplicationScoped
public class PickLines {
  /** In the place of a place: what is bought. */
  public static final String OUTSIDE = "outside";

  private final RestockStore store;
  private final RestockItems items;
  private final Database database;
  private final Clock clock;

  PickLines(RestockStore store, RestockItems items, Database database, Clock clock) {
    this.store = store;
    this.items = items;
    this.database = database;
    this.clock = clock;
  }

  /** A line: one request. */
  public record Line(Restock r, String shelf, boolean taken, UUID commandId) {}

  /** Lines that lie together. */
  public record Group(String shelf, List<Line> lines) {}

  /** From where something is to be taken, with how many requests. */
  Map<String, Long> sources() {
    return requested().stream()
        .collect(Collectors.groupingBy(PickLines::from, TreeMap::new, Collectors.counting()));
  }

  List<Group> from(String place) {
    Set<UUID> taken = taken();
    TreeMap<String, List<Line>> groups =
        requested().stream()
            .filter(r -> from(r).equals(place))
            .map(r -> line(r, taken.contains(r.request())))
            .collect(Collectors.groupingBy(Line::shelf, TreeMap::new, Collectors.toList()));
    return groups.entrySet().stream().map(g -> new Group(g.getKey(), g.getValue())).toList();
  }

  private List<Restock> requested() {
    return store.list(false).stream().filter(r -> r.state() == State.REQUESTED).toList();
  }

  private static String from(Restock r) {
    return r.fromPlace().orElse(OUTSIDE);
  }

  private Line line(Restock r, boolean taken) {
    String shelf =
        items
            .of(r.item())
            .map(RestockItems.Item::shelf)
            .or(() -> Optional.of("Helmets").filter(s -> r.ofHelmet()))
            .orElse("Other parts");
    return new Line(r, shelf, taken, UuidV7.next());
  }

  private Set<UUID> taken() {
    return new TreeSet<>(
        database.list("select request from restock_taken", row -> row.getObject(1, UUID.class)));
  }

  /** Those that have been taken and not been told as picked yet, in order. */
  List<UUID> takenFrom(String place) {
    return from(place).stream()
        .flatMap(g -> g.lines().stream())
        .filter(Line::taken)
        .map(line -> line.r().request())
        .sorted()
        .toList();
  }

  void take(UUID request, String by) {
    database.change(
        "insert into restock_taken values (?, ?, ?) on conflict do nothing",
        request,
        by,
        clock.instant());
  }
}
