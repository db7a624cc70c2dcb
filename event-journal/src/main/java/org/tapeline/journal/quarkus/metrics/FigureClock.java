package org.tapeline.journal.quarkus.metrics;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.MultiGauge;
import io.micrometer.core.instrument.Tags;
import io.quarkus.arc.All;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.quarkus.Serving;

/**
 * Counts the figures in a thread of its own, so that neither a scrape waits for the database nor
 * the database for how often somebody scrapes. A figure that cannot be counted disappears until it
 * can.
 */
@ApplicationScoped
class FigureClock {
  private static final Logger LOG = System.getLogger(FigureClock.class.getName());

  private final Transactions transactions;
  private final Duration every;
  private final Map<Figure, MultiGauge> gauges = new LinkedHashMap<>();
  private final ScheduledExecutorService thread =
      Executors.newSingleThreadScheduledExecutor(
          work -> Thread.ofPlatform().name("figures").daemon().unstarted(work));

  FigureClock(
      @All List<Figures> all,
      MeterRegistry registry,
      Transactions transactions,
      @ConfigProperty(name = "tapeline.figures.every", defaultValue = "PT15S") Duration every) {
    this.transactions = transactions;
    this.every = every;
    for (Figures figures : all) {
      figures.figures().forEach(figure -> gauges.put(figure, gauge(figure, registry)));
    }
  }

  private static MultiGauge gauge(Figure figure, MeterRegistry registry) {
    return MultiGauge.builder(figure.name()).description(figure.description()).register(registry);
  }

  void start(@Observes StartupEvent event, Serving serving) {
    if (serving.here()) {
      thread.scheduleWithFixedDelay(this::count, 0, every.toMillis(), TimeUnit.MILLISECONDS);
    }
  }

  private void count() {
    gauges.forEach(this::count);
  }

  private void count(Figure figure, MultiGauge gauge) {
    List<MultiGauge.Row<?>> rows = List.of();
    try {
      rows = transactions.required(connection -> rows(connection, figure.sql()));
    } catch (RuntimeException e) {
      LOG.log(Level.DEBUG, "{0} cannot be counted now: {1}", figure.name(), e.toString());
    }
    gauge.register(rows, true);
  }

  private static List<MultiGauge.Row<?>> rows(Connection connection, String sql)
      throws SQLException {
    try (PreparedStatement select = connection.prepareStatement(sql);
        ResultSet row = select.executeQuery()) {
      ResultSetMetaData columns = row.getMetaData();
      int last = columns.getColumnCount();
      List<MultiGauge.Row<?>> rows = new ArrayList<>();
      while (row.next()) {
        Tags labels = Tags.empty();
        for (int i = 1; i < last; i++) {
          labels = labels.and(columns.getColumnLabel(i), row.getString(i));
        }
        rows.add(MultiGauge.Row.of(labels, row.getDouble(last)));
      }
      return rows;
    }
  }

  void stop(@Observes ShutdownEvent event) {
    thread.shutdownNow();
  }
}
