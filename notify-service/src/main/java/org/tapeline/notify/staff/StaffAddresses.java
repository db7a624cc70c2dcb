package org.tapeline.notify.staff;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.ZoneId;
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

  /** The equipment manager: whoever is told when nobody else reached a person. */
  String manager();

  /** Telephone numbers (E.164) by recipient, such as {@code fitters.NORTH} or {@code manager}. */
  Map<String, String> phones();

  /** The language of staff notices. */
  @WithDefault("en")
  String language();

  /** Other languages by recipient. */
  Map<String, String> languages();

  /** The time zone of recipients that belong to no place. */
  @WithDefault("UTC")
  ZoneId zone();
}
