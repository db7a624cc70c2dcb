package org.tapeline.inventory.helmet;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.journal.Cause;

/** Tells all who must act when helmets come or go. */
@ApplicationScoped
public class HelmetWatches {
  private final List<HelmetWatch> watches;

  HelmetWatches(@All List<HelmetWatch> watches) {
    this.watches = watches;
  }

  void taken(String tag, String why, Cause cause) {
    watches.forEach(w -> w.taken(tag, why, cause));
  }

  void takenAll(List<String> tags, String why, Cause cause) {
    watches.forEach(w -> w.takenAll(tags, why, cause));
  }

  void free(Helmet helmet, Cause cause) {
    watches.forEach(w -> w.free(helmet.tag(), helmet.model(), helmet.size(), cause));
  }
}
