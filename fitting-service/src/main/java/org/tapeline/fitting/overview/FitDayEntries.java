package org.tapeline.fitting.overview;

import java.util.HashMap;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;

/** The entries of the form of a fit day, as a browser sends them. */
public class FitDayEntries {
  @RestForm String commandId;
  @RestForm String field;
  @RestForm String date;
  @RestForm String opens;
  @RestForm String closes;
  @RestForm String fitters;
  @RestForm String minutesPerFit;

  Map<String, String> typed() {
    Map<String, String> typed = new HashMap<>();
    put(typed, "field", field);
    put(typed, "date", date);
    put(typed, "opens", opens);
    put(typed, "closes", closes);
    put(typed, "fitters", fitters);
    put(typed, "minutesPerFit", minutesPerFit);
    return typed;
  }

  private static void put(Map<String, String> typed, String entry, String value) {
    if (value != null) {
      typed.put(entry, value);
    }
  }
}
