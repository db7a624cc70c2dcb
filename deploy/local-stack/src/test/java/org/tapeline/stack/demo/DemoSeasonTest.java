package org.tapeline.stack.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class DemoSeasonTest {
  private static final Path SEASON =
      Path.of(System.getProperty("tapeline.root"), "deploy/demo/larkfield-valley");

  @Test
  @DisplayName("The files are those that the inventor of the season writes")
  void filesAreTheInvented() throws IOException {
    for (Map.Entry<String, String> file : LarkfieldValley.files().entrySet()) {
      assertThat(SEASON.resolve(file.getKey())).hasContent(file.getValue());
    }
  }

  @Test
  @DisplayName("Every row has every column")
  void rowsAreWhole() throws IOException {
    for (String file : LarkfieldValley.files().keySet()) {
      List<Map<String, String>> rows = rows(file);
      assertThat(rows).as(file).isNotEmpty().allMatch(row -> row.size() == rows.getFirst().size());
    }
  }

  @Test
  @DisplayName("Players, helmets and parts are at places that there are")
  void placesExist() throws IOException {
    Set<String> places = column("places.csv", "code");
    assertThat(places).containsAll(column("players.csv", "field"));
    assertThat(places).containsAll(column("helmets.csv", "place"));
    assertThat(places).containsAll(column("parts.csv", "place"));
    assertThat(places).containsAll(column("travel.csv", "from"));
    assertThat(places).containsAll(column("travel.csv", "to"));
  }

  @Test
  @DisplayName(
      "Helmets are of sizes that the charts have, each with a tag of its own that checks out")
  void helmetsAreKnown() throws IOException {
    Set<String> sizes = new HashSet<>();
    rows("charts.csv").forEach(row -> sizes.add(row.get("model") + row.get("size")));
    List<Map<String, String>> helmets = rows("helmets.csv");
    assertThat(helmets).allMatch(row -> sizes.contains(row.get("model") + row.get("size")));
    assertThat(column("helmets.csv", "tag"))
        .hasSameSizeAs(helmets)
        .allMatch(DemoSeasonTest::checks);
  }

  @Test
  @DisplayName("ISO 7064 MOD 37,36: A12425GABC1234002 has the check character M")
  void checkCharacter() {
    assertThat(LarkfieldValley.checkCharacter("A12425GABC1234002")).isEqualTo('M');
  }

  @Test
  @DisplayName("Nobody can be reached: mail goes to example.org, telephones are those of stories")
  void nobodyIsReal() throws IOException {
    for (Map<String, String> row : rows("players.csv")) {
      for (String who : List.of("guardian", "guardian2")) {
        assertThat(row.get(who + "_email")).matches("|.+@example\\.org");
        assertThat(row.get(who + "_phone")).matches("|\\([0-9]{3}\\) 555-01[0-9]{2}");
      }
    }
  }

  @Test
  @DisplayName("Some guardians have several players, some have no e-mail, some read Spanish")
  void familiesDiffer() throws IOException {
    List<Map<String, String>> players = rows("players.csv");
    assertThat(column("players.csv", "guardian_phone")).hasSizeLessThan(players.size());
    assertThat(column("players.csv", "guardian_email")).contains("");
    assertThat(column("players.csv", "guardian_language")).containsExactlyInAnyOrder("en", "es");
    assertThat(column("readings.csv", "player_number"))
        .isSubsetOf(column("players.csv", "player_number"));
  }

  private static boolean checks(String tag) {
    int last = tag.length() - 1;
    return LarkfieldValley.checkCharacter(tag.substring(0, last)) == tag.charAt(last);
  }

  private static List<Map<String, String>> rows(String file) throws IOException {
    assertThat(Files.readString(SEASON.resolve(file)))
        .endsWith("\n")
        .doesNotContain("\r", "\uFEFF");
    return DemoFiles.rows(SEASON.resolve(file));
  }

  private static Set<String> column(String file, String column) throws IOException {
    return rows(file).stream().map(row -> row.get(column)).collect(Collectors.toSet());
  }
}
