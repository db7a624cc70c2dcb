package org.tapeline.acceptance;

import java.util.Optional;

/**
 * Who asks, in the order of the matrix's columns. Own to the fitter are the fields NORTH and RIVER,
 * to the coach the team U10-HAWKS, which plays at NORTH.
 */
enum AccessRole {
  NOBODY(""),
  COACH("coach.hawks"),
  FITTER("fitter.north"),
  WAREHOUSE("depot"),
  MANAGER("manager");

  private final String user;

  AccessRole(String user) {
    this.user = user;
  }

  /** Whose name and password are sent; empty for somebody without. */
  Optional<String> user() {
    return Optional.of(user).filter(name -> !name.isEmpty());
  }

  String said() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
