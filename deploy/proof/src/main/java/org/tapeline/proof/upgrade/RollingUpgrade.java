package org.tapeline.proof.upgrade;

import java.io.IOException;
import java.sql.SQLException;
import java.util.logging.LogManager;

/** What {@code deploy/rolling-upgrade} does between starting and stopping copies. */
final class RollingUpgrade {
  private RollingUpgrade() {}

  /**
   * Arguments: the gateway's port, then {@code fit STEP PLAYERS} or {@code check PLAYERS}. Ends
   * with 1 when something is not as it must be.
   */
  public static void main(String[] args) throws IOException, SQLException, InterruptedException {
    if (args.length < 3) {
      System.err.println("Usage: PORT fit STEP PLAYERS | PORT check PLAYERS");
      System.exit(2);
    }
    // What a client of Kafka says of itself would hide the counts.
    LogManager.getLogManager().reset();
    int port = Integer.parseInt(args[0]);
    Databases databases = new Databases(port + 7000);
    if (args[1].equals("check")) {
      System.exit(new UpgradeCheck(databases, port + 7001).run(Integer.parseInt(args[2])) ? 0 : 1);
    }
    int step = Integer.parseInt(args[2]);
    int players = Integer.parseInt(args[3]);
    Copies copies = new Copies(port);
    new Fits(copies, databases).run(step, players);
    System.out.printf(
        "   %d players fitted, %d commands through copy A, %d through copy B%n",
        players, copies.byA(), copies.byB());
  }
}
