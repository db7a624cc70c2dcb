package org.tapeline.notify.staff;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.util.Map;

/** Where staff are told: addresses of the association, not of persons, by configuration. */
@ConfigMapping(prefix = "tapeline.staff")
public interface StaffAddresses {
  /** For every depot without an address of its own. */
  String depot();

  /** By the depot's place code. */
  Map<String, String> depots();

  /** By the field's code; a field without one is told nothing. */
  Map<String, String> fitters();

  /** The language of all staff notices. */
  @WithDefault("en")
  String language();
}
