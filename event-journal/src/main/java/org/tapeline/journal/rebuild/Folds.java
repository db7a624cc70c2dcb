package org.tapeline.journal.rebuild;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/**
 * Where each stream stands after an event, for tables that show a state and not the event itself.
 * The newest are kept; those of other streams are folded from the journal again.
 *
 * @param <S> a state
 */
public final class Folds<S> {
  private static final int MOST = 2_000;

  private final Journal journal;
  private final Function<String, S> begin;
  private final BiFunction<S, RecordedEvent, S> evolve;
  private final Map<String, At<S>> recent = new LinkedHashMap<>(16, 0.75f, true);

  private record At<S>(long version, S state) {}

  /**
   * @param begin the state before the first event, by the id in the stream's name
   */
  public Folds(Journal journal, Function<String, S> begin, BiFunction<S, RecordedEvent, S> evolve) {
    this.journal = journal;
    this.begin = begin;
    this.evolve = evolve;
  }

  public S after(RecordedEvent event) {
    At<S> before = recent.get(event.stream());
    S state =
        before != null && before.version() == event.version() - 1
            ? evolve.apply(before.state(), event)
            : folded(event);
    recent.put(event.stream(), new At<>(event.version(), state));
    if (recent.size() > MOST) {
      recent.remove(recent.keySet().iterator().next());
    }
    return state;
  }

  private S folded(RecordedEvent last) {
    int dash = last.stream().indexOf('-');
    String id = last.stream().substring(dash + 1);
    S state = begin.apply(id);
    if (last.version() == 1) {
      return evolve.apply(state, last);
    }
    for (RecordedEvent event :
        journal.load(new StreamName(last.stream().substring(0, dash), id, id))) {
      if (event.version() <= last.version()) {
        state = evolve.apply(state, event);
      }
    }
    return state;
  }
}
