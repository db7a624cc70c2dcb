package org.tapeline.journal.quarkus.metrics;

import java.util.List;

/** What a service has counted of its own tables: a bean of it is found by itself. */
@FunctionalInterface
public interface Figures {
  List<Figure> figures();
}
