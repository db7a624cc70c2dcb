package org.tapeline.journal.quarkus.trace;

import io.opentelemetry.api.trace.Tracer;
import io.opentelemetry.sdk.trace.IdGenerator;
import jakarta.enterprise.inject.Instance;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.journal.watch.JournalWatch;

/** Traces when they are wanted; else nothing of them runs. */
@Singleton
public class Traces {
  private final ChainIds ids = new ChainIds();
  private final boolean off;
  private final Instance<Tracer> tracer;

  Traces(@ConfigProperty(name = "quarkus.otel.sdk.disabled") boolean off, Instance<Tracer> tracer) {
    this.off = off;
    this.tracer = tracer;
  }

  @Produces
  @Singleton
  IdGenerator ids() {
    return ids;
  }

  public JournalWatch watch() {
    return off ? JournalWatch.NONE : new TracingWatch(tracer.get(), ids);
  }
}
