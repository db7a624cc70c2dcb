package org.tapeline.journal.quarkus.metrics;

import io.micrometer.core.instrument.Tags;
import io.micrometer.core.instrument.config.MeterFilter;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Has every figure say of which service it is, whoever scrapes it by which name. */
@Singleton
class ServiceLabel {

  @Produces
  @Singleton
  MeterFilter service(@ConfigProperty(name = "tapeline.service") String service) {
    return MeterFilter.commonTags(Tags.of("service", service));
  }
}
