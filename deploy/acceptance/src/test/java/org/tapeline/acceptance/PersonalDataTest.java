package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** By {@code deploy/privacy-scan}, as whoever answers for the data would look. */
@DisplayName("People's names, addresses, numbers and days of birth")
class PersonalDataTest {
  private static final String PLAYER = "LV-9003";
  private static final String ROSTER =
      "player_number,given_name,family_name,birth_date,sex,team,field,"
          + "guardian_name,guardian_email,guardian_phone,guardian_language\n"
          + PLAYER
          + ",Isolde,Quenderby,2014-02-19,f,U10-HAWKS,NORTH,Barnaby Quenderby,"
          + "barnaby.quenderby@example.org,(720) 555-0176,en\n";
  private static final List<String> WORDS =
      List.of(
          "Isolde Quenderby",
          "Barnaby Quenderby",
          "2014-02-19",
          "barnaby.quenderby@example.org",
          "(720) 555-0176");

  @TempDir Path folder;

  @Test
  @DisplayName("stand in no journal, no log and no topic but people, and in declared tables only")
  void nowhereElse() {
    Scan scan = scan();
    assertThat(scan.said())
        .contains("tables of sizing", "tables of fitting", "tables of inventory")
        .contains("tables of notify", "topic notify.events", " 0 found where they may not stand");
    assertThat(scan.status()).as(scan.said()).isZero();
  }

  @Test
  @DisplayName("stand nowhere any more once a player is erased, in no table of any service")
  void erased() throws IOException {
    Tapeline.importing("manager", "/sizing/api/import/players", ROSTER);
    FailedFit.of(PLAYER);
    Patience.soon()
        .untilAsserted(() -> assertThat(Post.to("barnaby.quenderby@example.org")).isNotEmpty());
    Path words = Files.write(folder.resolve("words.txt"), WORDS);
    assertThat(scan("--erased", words.toString()).said())
        .contains("table sizing.player ", "table sizing.guardian ", "table fitting.player ")
        .contains("table notify.player ", "table notify.guardian ", "table notify.notice_text ");

    Raw.delete("manager", "/sizing/api/players/" + PLAYER);
    Patience.soon()
        .pollInterval(Duration.ofSeconds(2))
        .untilAsserted(
            () -> {
              Scan after = scan("--erased", words.toString());
              assertThat(after.status()).as(after.said()).isZero();
            });
  }

  private record Scan(int status, String said) {}

  private static Scan scan(String... options) {
    List<String> command =
        new ArrayList<>(List.of(Tapeline.ROOT.resolve("deploy/privacy-scan").toString()));
    command.addAll(List.of(options));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    int port = URI.create(Tapeline.address()).getPort();
    builder.environment().put("TAPELINE_PORT", Integer.toString(port));
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    if (System.getenv("TAPELINE_ADDRESS") == null) {
      builder.environment().put("TAPELINE_DATA", LocalRun.data("data").toString());
    }
    try {
      Process process = builder.start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return new Scan(process.waitFor(), said);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
