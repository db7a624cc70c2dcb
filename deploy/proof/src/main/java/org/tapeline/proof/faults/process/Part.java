package org.tapeline.proof.faults.process;

import java.util.List;

/** A part of the stack that runs as a process of its own. */
public enum Part {
  SIZING("sizing"),
  FITTING("fitting"),
  INVENTORY("inventory"),
  NOTIFY("notify"),
  BROKER("kafka"),
  DATABASE("postgres");

  /** Those with a journal and a relay. */
  public static final List<Part> SERVICES = List.of(SIZING, FITTING, INVENTORY, NOTIFY);

  private final String code;

  Part(String code) {
    this.code = code;
  }

  /** What it is called on command lines, in folders and, for a service, in addresses. */
  public String code() {
    return code;
  }

  public boolean isService() {
    return SERVICES.contains(this);
  }
}
