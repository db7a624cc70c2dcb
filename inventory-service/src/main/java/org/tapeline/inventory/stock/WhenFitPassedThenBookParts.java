package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.inventory.helmet.HelmetFit;
import org.tapeline.inventory.helmet.HelmetFit.Kind;
import org.tapeline.inventory.helmet.HelmetFits;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/**
 * Parts that were fitted have left the stock of the field; the helmet's time line tells the fit.
 */
@ApplicationScoped
public class WhenFitPassedThenBookParts {
  private final StockDesk stock;
  private final StockWatch watch;
  private final PartChecks checks;
  private final HelmetFits fits;

  WhenFitPassedThenBookParts(
      StockDesk stock, StockWatch watch, PartChecks checks, HelmetFits fits) {
    this.stock = stock;
    this.watch = watch;
    this.checks = checks;
    this.fits = fits;
  }

  /** What is read of fitting's {@code fit-passed}. */
  record FitPassed(
      UUID session,
      UUID player,
      String field,
      String tag,
      String model,
      List<String> parts,
      Instant at) {}

  public void declareOn(Subscription subscription) {
    subscription.on("org.tapeline.fitting.fit-passed.v1", FitPassed.class, this::passed);
  }

  private void passed(FitPassed d, ReceivedEvent event) {
    Optional<String> field = Optional.of(d.field());
    fits.keep(d.tag(), new HelmetFit(Kind.PASSED, d.player(), field, "", d.at()), event);
    for (int i = 0; i < d.parts().size(); i++) {
      stock.use(d.field(), d.parts().get(i), d.model(), d.session(), i, Cause.of(event, "parts"));
    }
    for (String item : new TreeSet<>(d.parts())) {
      checks.look(d.session(), d.field(), item, d.tag(), d.model(), d.at());
      watch.used(d.field(), item, d.player(), Cause.of(event, "used"));
    }
  }
}
