package org.tapeline.journal.rebuild;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.Subscription;

/**
 * Tables that can be thrown away, since all that they say follows from events: of the service's own
 * journal, of its peers, or of the state that it publishes. What it is given must write these
 * tables and nothing else, and must lead to nothing: no command, no event, no notice.
 */
public final class ReadModel {
  private final String name;
  private final List<ReadTable> tables;
  private final List<Shown> shown = new ArrayList<>();
  private final Subscription copies;
  private final List<Fill> fills = new ArrayList<>();

  /** Fills or tidies the new tables at the end, while nobody writes the old ones. */
  @FunctionalInterface
  public interface Fill {
    /**
     * @param live the schema of the old tables; the new ones are found by their names alone
     */
    void run(Connection connection, String live) throws SQLException;
  }

  private record Shown(Class<?> events, Consumer<RecordedEvent> show) {}

  private ReadModel(String name, List<ReadTable> tables) {
    this.name = name;
    this.tables = tables;
    this.copies = Subscription.named(name);
  }

  /**
   * @param name as people type it, such as {@code sign-offs}
   * @param tables those that others refer to before those that refer to them
   */
  public static ReadModel of(String name, ReadTable... tables) {
    return new ReadModel(name, List.of(tables));
  }

  /**
   * @param events the type of the events, or one that several have in common
   * @param show writes what an event changes
   */
  public ReadModel fromJournal(Class<?> events, Consumer<RecordedEvent> show) {
    shown.add(new Shown(events, show));
    return this;
  }

  /** Copies of what peers say; types that are not declared are passed over. */
  public ReadModel fromPeers(Consumer<Subscription> declare) {
    declare.accept(copies);
    return this;
  }

  public ReadModel atTheEnd(Fill fill) {
    fills.add(fill);
    return this;
  }

  public String name() {
    return name;
  }

  public List<ReadTable> tables() {
    return tables;
  }

  Subscription copies() {
    return copies;
  }

  List<Fill> fills() {
    return List.copyOf(fills);
  }

  List<Class<?>> events() {
    return shown.stream().<Class<?>>map(Shown::events).toList();
  }

  void show(RecordedEvent event) {
    for (Shown one : shown) {
      if (one.events().isInstance(event.data())) {
        one.show().accept(event);
      }
    }
  }
}
