package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.inventory.roster.PlayerFields;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Who sees which helmets: a fitter those of the own fields, the warehouse all. */
@ApplicationScoped
public class HelmetAccess {
  private final Caller caller;
  private final HelmetViews views;
  private final PlayerFields fields;

  HelmetAccess(Caller caller, HelmetViews views, PlayerFields fields) {
    this.caller = caller;
    this.views = views;
    this.fields = fields;
  }

  /** The places to which the caller is bound; empty for all. */
  public Optional<List<String>> bounds() {
    return caller.worksAs("warehouse")
        ? Optional.empty()
        : Optional.of(caller.fields().stream().sorted().toList());
  }

  /**
   * @throws Problem 404 when there is none, 403 when it is at another field
   */
  public View see(String tag) {
    View view =
        views
            .find(tag.strip())
            .orElseThrow(
                () -> Problem.notFound("There is no helmet " + tag + ". Read the tag again."));
    if (!own(view)) {
      throw Problem.forbidden("The helmet " + tag + " belongs to a field that is not yours.");
    }
    return view;
  }

  /** Whether there is such a helmet and the caller may see it. */
  public boolean maySee(String tag) {
    return views.find(tag).filter(this::own).isPresent();
  }

  private boolean own(View view) {
    return caller.worksAs("warehouse")
        || caller.mayWorkAt(view.place())
        || view.player().flatMap(fields::fieldOf).filter(caller::mayWorkAt).isPresent();
  }
}
