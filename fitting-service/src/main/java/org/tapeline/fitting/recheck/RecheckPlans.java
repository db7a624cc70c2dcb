package org.tapeline.fitting.recheck;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** The re-check plan in force, read and checked when the service starts. */
@Startup
@ApplicationScoped
public class RecheckPlans {
  private static final String BUILT_IN = "/recheck/plan.json";

  private final RecheckPlan inForce = builtIn();

  public RecheckPlan inForce() {
    return inForce;
  }

  /** The plan that comes with the service. */
  public static RecheckPlan builtIn() {
    try (InputStream in = RecheckPlans.class.getResourceAsStream(BUILT_IN)) {
      return EventJson.MAPPER.readValue(in, RecheckPlan.class);
    } catch (IOException e) {
      throw new UncheckedIOException("The re-check plan " + BUILT_IN + " cannot be used", e);
    }
  }
}
