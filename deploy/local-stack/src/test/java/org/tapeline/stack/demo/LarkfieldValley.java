package org.tapeline.stack.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Invents the demo season of the Larkfield Valley association, always the same. Nobody in it
 * exists: the family names are made up, mail goes to example.org, and the telephone numbers lie in
 * the range that is kept for stories.
 *
 * <p>To write the files anew: {@code java
 * deploy/local-stack/src/test/java/org/tapeline/stack/demo/LarkfieldValley.java
 * deploy/demo/larkfield-valley}
 */
final class LarkfieldValley {
  private static final long SEED = 20_260_801;
  private static final int SEASON = 2026;
  private static final int PLAYERS_IN_A_TEAM = 15;

  private static final List<String> GIVEN_M =
      words(
          "Adrian Alonso Bastian Caleb Damian Dario Elio Emil Ezra Felix Gideon Hugo Ivo Jonas"
              + " Leandro Linus Mateo Milo Nico Orson Pablo Quentin Rafael Silas Tobias Ulises"
              + " Viktor Wendel Yago Zeno");
  private static final List<String> GIVEN_F =
      words(
          "Alba Clara Delia Edith Flora Greta Ines Juno Lucia Maren Nora Odette Paloma Rosa Selma"
              + " Tilda");
  private static final List<String> GUARDIAN_GIVEN =
      words(
          "Agnes Bruno Carmen Dolores Edgar Frida Gustavo Helena Ignacio Josefa Konrad Lorena"
              + " Marisol Nestor Olga Petra Ramona Stellan Teresa Urban Vera Wilma Xavier Yolanda");
  private static final List<String> FAMILY =
      words(
          "Almendral Ashgrove Barrancal Bellmarsh Birchmoor Campoclaro Coldwater Corvane Dunhollow"
              + " Elderfen Encinares Farrowdale Fuentevera Gatherwood Hazelbrook Inglemere"
              + " Jaralillo Kestrelby Larchmont-Ruiz Lomaverde Marshwick Mirasierra Nettlefold"
              + " Oakhaven Olmedal Pinarejo Quillmoor Robledal Rushford Saltmeadow Solanares"
              + " Thistledown Umberlee Valdehoja Wexmoor Willowby Yarrowgate Zarzalejo");

  private final Random random = new Random(SEED);
  private final Map<String, String> files = new LinkedHashMap<>();
  private final List<Player> players = new ArrayList<>();

  private record Place(String code, String name, String kind, int altitude) {}

  /** A team with the age on the season's first day that most of its players have. */
  private record Team(String code, String field, int age) {}

  private record Guardian(String name, String email, String phone, String language) {
    String cells() {
      return String.join(",", name, email, phone, language);
    }
  }

  private record Family(String name, Guardian first, Guardian second) {}

  private record Player(String number, Team team, int headMm) {}

  private static final List<Place> PLACES =
      List.of(
          new Place("DEPOT", "Larkfield depot", "depot", 1510),
          new Place("NORTH", "North Meadow", "field", 1620),
          new Place("RIVER", "River Bend", "field", 1480),
          new Place("SOUTH", "South Common", "field", 1555),
          new Place("MILL", "Mill Lane", "field", 1710),
          new Place("ORCHARD", "Orchard Hill", "field", 1885),
          new Place("RIDGE", "Ridge Top", "field", 2240));

  /** Minutes by road between the places, in their order. */
  private static final int[][] MINUTES = {
    {},
    {18},
    {12, 16},
    {15, 29, 21},
    {22, 14, 25, 33},
    {31, 24, 35, 42, 19},
    {48, 39, 52, 58, 34, 27},
  };

  private static final List<Team> TEAMS =
      List.of(
          new Team("U10-HAWKS", "NORTH", 9),
          new Team("U12-KITES", "NORTH", 11),
          new Team("U8-OTTERS", "RIVER", 8),
          new Team("U12-HERONS", "RIVER", 11),
          new Team("U10-FOXES", "SOUTH", 9),
          new Team("U14-BADGERS", "MILL", 13),
          new Team("U12-STOATS", "ORCHARD", 11),
          new Team("U14-IBEX", "RIDGE", 13));

  public static void main(String[] args) throws IOException {
    Path directory = Path.of(args[0]);
    for (Map.Entry<String, String> file : files().entrySet()) {
      Files.writeString(directory.resolve(file.getKey()), file.getValue());
    }
  }

  /** The files of the season by name. */
  static Map<String, String> files() {
    return new LarkfieldValley().invent();
  }

  private Map<String, String> invent() {
    places();
    travel();
    charts();
    players();
    readings();
    helmets();
    parts();
    return files;
  }

  private void places() {
    StringBuilder csv = new StringBuilder("code,name,kind,altitude_m,time_zone\n");
    for (Place p : PLACES) {
      line(csv, p.code, p.name, p.kind, "" + p.altitude, "America/Denver");
    }
    files.put("places.csv", csv.toString());
  }

  private void travel() {
    StringBuilder csv = new StringBuilder("from,to,minutes\n");
    for (int i = 0; i < MINUTES.length; i++) {
      for (int j = 0; j < MINUTES[i].length; j++) {
        line(csv, PLACES.get(i).code, PLACES.get(j).code, "" + MINUTES[i][j]);
      }
    }
    files.put("travel.csv", csv.toString());
  }

  /** 21 in is a youth medium and 22 7/8 in a youth large in both models; each has gaps. */
  private void charts() {
    files.put(
        "charts.csv",
        """
        model,size,from,to,unit
        model-a,youth-small,490,520,mm
        model-a,youth-medium,521,552,mm
        model-a,youth-large,556,585,mm
        model-a,youth-x-large,586,620,mm
        model-b,youth-small,19.25,20.5,in
        model-b,youth-medium,20.625,21.75,in
        model-b,youth-large,21.875,23,in
        model-b,youth-x-large,23.125,24.25,in
        """);
  }

  private void players() {
    StringBuilder csv =
        new StringBuilder(
            "player_number,given_name,family_name,birth_date,sex,team,field,"
                + "guardian_name,guardian_email,guardian_phone,guardian_language,"
                + "guardian2_name,guardian2_email,guardian2_phone,guardian2_language\n");
    List<Family> families = families();
    for (Team team : TEAMS) {
      for (int i = 0; i < PLAYERS_IN_A_TEAM; i++) {
        // Fewer families than places on teams: some have two or three children in the season.
        Family family = families.get(players.size() % families.size());
        boolean girl = random.nextInt(6) == 0;
        String number = "LV-%04d".formatted(players.size() + 1);
        players.add(new Player(number, team, head(team, players.size())));
        line(
            csv,
            number,
            pick(girl ? GIVEN_F : GIVEN_M),
            family.name,
            "%d-%02d-%02d"
                .formatted(SEASON - team.age, 1 + random.nextInt(8), 1 + random.nextInt(28)),
            random.nextInt(20) == 0 ? "" : girl ? "f" : "m",
            team.code,
            team.field,
            family.first.cells(),
            family.second == null ? ",,," : family.second.cells());
      }
    }
    files.put("players.csv", csv.toString());
  }

  private List<Family> families() {
    List<Family> families = new ArrayList<>();
    int phone = 0;
    for (int i = 0; i < 96; i++) {
      String name = FAMILY.get(i % FAMILY.size());
      String language = random.nextInt(4) == 0 ? "es" : "en";
      Guardian first = guardian(name, i, ++phone, language, i % 17 == 16);
      Guardian second =
          random.nextInt(4) == 0 ? guardian(name, i + 500, ++phone, language, false) : null;
      families.add(new Family(name, first, second));
    }
    return families;
  }

  private Guardian guardian(String family, int index, int phone, String language, boolean noMail) {
    String given = pick(GUARDIAN_GIVEN);
    String mail =
        "%s.%s.%d@example.org"
            .formatted(given.toLowerCase(), family.toLowerCase().replace("-", ""), index + 1);
    String area = List.of("303", "719", "970").get(phone / 100 % 3);
    return new Guardian(
        given + " " + family,
        noMail ? "" : mail,
        "(%s) 555-01%02d".formatted(area, phone % 100),
        language);
  }

  /**
   * Spread like the heads of US children measured in 1977 (means about 526, 529, 538 and 546 mm at
   * 8, 9, 11 and 13 years), a little less in the tails.
   */
  private int head(Team team, int index) {
    if (index == 0) {
      return 533;
    }
    int mean = team.age < 9 ? 526 : team.age < 11 ? 529 : team.age < 13 ? 538 : 546;
    double offset = Math.clamp(random.nextGaussian(), -2.1, 2.1) * 15;
    return (int) Math.round(mean + offset);
  }

  private void readings() {
    StringBuilder csv = new StringBuilder("player_number,first,second,third\n");
    for (int i = 0; i < players.size(); i++) {
      Player player = players.get(i);
      if (i == 0) {
        line(csv, player.number, "21 in", "21 in", "");
      } else if (i == 75) {
        line(csv, player.number, "22 7/8 in", "22 7/8 in", "");
      } else if (i % 15 < 13) {
        int second = player.headMm + random.nextInt(5) - 2;
        boolean apart = random.nextInt(12) == 0;
        line(
            csv,
            player.number,
            typed(player.headMm, i),
            typed(apart ? player.headMm + 9 : second, i),
            apart ? typed(second, i) : "");
      }
    }
    files.put("readings.csv", csv.toString());
  }

  /** Each team's measurer has a tape and a habit of their own. */
  private static String typed(int mm, int index) {
    return switch (index / PLAYERS_IN_A_TEAM % 4) {
      case 0 -> inches(mm);
      case 1 -> "%d.%d cm".formatted(mm / 10, mm % 10);
      case 2 -> mm + " mm";
      default -> tenths(mm) / 10 + "." + tenths(mm) % 10 + " in";
    };
  }

  private static long tenths(int mm) {
    return Math.round(mm / 2.54);
  }

  private static String inches(int mm) {
    int eighths = (int) Math.round(mm / 25.4 * 8);
    int part = eighths % 8;
    String whole = "" + eighths / 8;
    return switch (part) {
      case 0 -> whole + " in";
      case 2, 6 -> whole + " " + part / 2 + "/4 in";
      case 4 -> whole + " 1/2 in";
      default -> whole + " " + part + "/8 in";
    };
  }

  private void helmets() {
    StringBuilder csv =
        new StringBuilder("tag,model,size,lot,manufactured_on,certified_until,place\n");
    int serial = 0;
    for (Team team : TEAMS) {
      for (String size : sizes(team)) {
        serial = helmet(csv, serial, size, team.field);
      }
    }
    for (String size :
        words(
            "youth-small youth-small youth-small youth-medium youth-medium youth-medium"
                + " youth-medium youth-large youth-large youth-large youth-x-large"
                + " youth-x-large")) {
      serial = helmet(csv, serial, size, "DEPOT");
    }
    files.put("helmets.csv", csv.toString());
  }

  /** 18 or 19 helmets for a team of 15, older teams with larger ones. */
  private List<String> sizes(Team team) {
    List<String> sizes = new ArrayList<>();
    int small = team.age < 9 ? 7 : team.age < 11 ? 6 : team.age < 13 ? 4 : 2;
    int large = team.age < 9 ? 1 : team.age < 11 ? 2 : team.age < 13 ? 3 : 6;
    for (int i = 0; i < 18 + random.nextInt(2); i++) {
      sizes.add(i < small ? "youth-small" : i < small + large ? "youth-large" : "youth-medium");
    }
    return sizes;
  }

  private int helmet(StringBuilder csv, int serial, String size, String place) {
    int next = serial + 1;
    String body = "LV26%04d".formatted(next);
    String model = random.nextInt(3) == 0 ? "model-b" : "model-a";
    int year = SEASON - 1 - random.nextInt(3);
    int month = 1 + random.nextInt(6);
    line(
        csv,
        body + checkCharacter(body),
        model,
        size,
        "%s-%d%02d".formatted(model.endsWith("a") ? "A" : "B", year % 100, month),
        "%d-%02d-15".formatted(year, month),
        "%d-%02d-01".formatted(SEASON + 2 + random.nextInt(2), 3 + random.nextInt(6)),
        place);
    return next;
  }

  /** ISO 7064 MOD 37,36. */
  static char checkCharacter(String body) {
    String alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    int p = 36;
    for (char c : body.toCharArray()) {
      int s = (p + alphabet.indexOf(c)) % 36;
      p = (s == 0 ? 36 : s) * 2 % 37;
    }
    return alphabet.charAt((37 - p) % 36);
  }

  private void parts() {
    StringBuilder csv = new StringBuilder("place,item,model,quantity\n");
    for (Place place : PLACES) {
      boolean depot = place.kind.equals("depot");
      line(csv, place.code, "jaw-pad-15mm", "model-a", depot ? "60" : "8");
      line(csv, place.code, "jaw-pad-20mm", "model-a", depot ? "60" : "8");
      line(csv, place.code, "jaw-pad-15mm", "model-b", depot ? "30" : "4");
      line(csv, place.code, "jaw-pad-20mm", "model-b", depot ? "30" : "4");
      line(csv, place.code, "chin-strap-small", "", depot ? "40" : "5");
      line(csv, place.code, "chin-strap-medium", "", depot ? "60" : "6");
      line(csv, place.code, "liner-crown", "model-a", depot ? "12" : "1");
      line(csv, place.code, "hardware-kit", "", depot ? "50" : "6");
      line(csv, place.code, "valve", "", depot ? "40" : "4");
    }
    files.put("parts.csv", csv.toString());
  }

  private String pick(List<String> names) {
    return names.get(random.nextInt(names.size()));
  }

  private static List<String> words(String text) {
    return List.of(text.split(" "));
  }

  private static void line(StringBuilder csv, String... cells) {
    csv.append(String.join(",", cells)).append('\n');
  }
}
