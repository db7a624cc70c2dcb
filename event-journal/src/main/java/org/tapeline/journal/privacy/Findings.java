package org.tapeline.journal.privacy;

import java.util.ArrayList;
import java.util.List;

/** How much was looked at, and where something stands that may not. */
final class Findings {
  private static final int MOST = 50;
  private final List<String> places = new ArrayList<>();
  private long found;

  void at(String place, Iterable<String> what) {
    for (String each : what) {
      found++;
      if (places.size() < MOST) {
        places.add(place + ": " + each);
      }
    }
  }

  long count() {
    return found;
  }

  /** The first of them. */
  List<String> places() {
    return List.copyOf(places);
  }
}
