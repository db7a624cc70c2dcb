package org.tapeline.journal.rebuild;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import org.postgresql.ds.PGSimpleDataSource;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.kafka.KafkaClients;
import org.tapeline.journal.store.JdbcTransactions;

/** A process that rebuilds until it has read everything, and then waits to be killed. */
final class KilledRebuild {
  static final String ON_THE_WAY = "on the way";

  private KilledRebuild() {}

  static Process start(JournalFixture on) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            KilledRebuild.class.getName(),
            on.dataSource.getUrl(),
            on.dataSource.getUser(),
            on.dataSource.getPassword(),
            on.kafka.bootstrapServers())
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  public static void main(String[] args) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl(args[0]);
    source.setUser(args[1]);
    source.setPassword(args[2]);
    JdbcTransactions transactions = new JdbcTransactions(source);
    KafkaClients kafka = new KafkaClients(args[3], Map.of());
    new Rebuild(transactions, source, JournalFixture.TYPES, () -> kafka.consumer("killed"))
        .run(
            List.of(new Tally(transactions).tallies()),
            false,
            (done, total) -> {
              System.out.println(ON_THE_WAY);
              waitToBeKilled();
            });
  }

  private static void waitToBeKilled() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
