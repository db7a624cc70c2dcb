package org.tapeline.sizing.roster;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

/** A row of the players' file, checked. */
record RosterLine(
    String number,
    String givenName,
    String familyName,
    LocalDate birthDate,
    String sex,
    String team,
    String field,
    List<GuardianLine> guardians) {

  static final Set<String> COLUMNS =
      Set.of("player_number", "given_name", "family_name", "birth_date", "team", "field");

  private static final LocalDate EARLIEST_BIRTH = LocalDate.of(1990, 1, 1);

  /**
   * A guardian of the row.
   *
   * @param email {@code null} where there is none
   * @param phone in E.164 form, {@code null} where there is none
   */
  record GuardianLine(String name, String email, String phone, String language) {}

  /**
   * Adds what is wrong to the errors; the line is only usable when nothing was added.
   *
   * @param notes what is worth knowing of a good line
   */
  static RosterLine of(
      Row row, LocalDate today, String region, List<RowError> errors, List<RowError> notes) {
    Check check = new Check(row, errors, notes);
    return new RosterLine(
        check.code("player_number", "[A-Z0-9-]{2,20}"),
        check.text("given_name"),
        check.text("family_name"),
        check.birthDate(today),
        check.oneOf("sex", Set.of("m", "f", "")),
        check.code("team", "[A-Z0-9-]{2,30}"),
        check.code("field", "[A-Z0-9-]{2,30}"),
        check.guardians(region));
  }

  private record Check(Row row, List<RowError> errors, List<RowError> notes) {

    void wrong(String column, String message) {
      errors.add(row.error(column, message));
    }

    String text(String column) {
      String value = row.get(column);
      if (value.isEmpty() || value.length() > 80) {
        wrong(column, "Needed, at most 80 characters.");
      } else if (!isPrintable(value)) {
        wrong(column, "Has a line break or another character that cannot be printed.");
      }
      return value;
    }

    /** A line break in a name would end the line of a mail's header or of a list. */
    private static boolean isPrintable(String text) {
      return text.codePoints()
          .map(Character::getType)
          .noneMatch(
              type ->
                  type == Character.CONTROL
                      || type == Character.SURROGATE
                      || type == Character.LINE_SEPARATOR
                      || type == Character.PARAGRAPH_SEPARATOR);
    }

    String code(String column, String form) {
      String value = row.get(column);
      if (!value.matches(form)) {
        wrong(column, "Needed: capital letters, digits and hyphens, such as LV-0001.");
      }
      return value;
    }

    String oneOf(String column, Set<String> allowed) {
      String value = row.get(column).toLowerCase();
      if (!allowed.contains(value)) {
        wrong(column, "Either m, f or empty.");
      }
      return value.isEmpty() ? null : value;
    }

    LocalDate birthDate(LocalDate today) {
      try {
        LocalDate date = LocalDate.parse(row.get("birth_date"));
        if (date.isBefore(EARLIEST_BIRTH) || date.isAfter(today.minusYears(3))) {
          wrong("birth_date", "Not the birth date of a youth player.");
        }
        return date;
      } catch (DateTimeParseException e) {
        wrong("birth_date", "Write the date as 2014-05-31.");
        return today;
      }
    }

    List<GuardianLine> guardians(String region) {
      List<GuardianLine> guardians = new ArrayList<>();
      for (String prefix : List.of("guardian_", "guardian2_")) {
        if (!row.get(prefix + "name").isEmpty()) {
          guardians.add(guardian(prefix, region));
        } else if (!row.get(prefix + "email").isEmpty() || !row.get(prefix + "phone").isEmpty()) {
          wrong(prefix + "name", "A guardian with an address needs a name.");
        }
      }
      return guardians;
    }

    private GuardianLine guardian(String prefix, String region) {
      String email = row.get(prefix + "email");
      if (!email.isEmpty()
          && !email.matches(
              "[^@\\s\\p{Cntrl}<>\",;]+@[^@\\s\\p{Cntrl}<>\",;]+\\.[^@\\s\\p{Cntrl}<>\",;]+")) {
        wrong(prefix + "email", "Not an e-mail address.");
      }
      String language = row.get(prefix + "language");
      if (!Set.of("", "en", "es").contains(language)) {
        wrong(prefix + "language", "Either en or es.");
      }
      return new GuardianLine(
          text(prefix + "name"),
          email.isEmpty() ? null : email,
          phone(prefix, region),
          language.isEmpty() ? "en" : language);
    }

    private String phone(String prefix, String region) {
      String text = row.get(prefix + "phone");
      if (text.isEmpty()) {
        return null;
      }
      Optional<PhoneText.Number> number = PhoneText.read(text, region);
      if (number.isEmpty()) {
        wrong(
            prefix + "phone",
            "Not a telephone number that exists. Write it with the area code; from abroad with +"
                + " and the country code.");
        return null;
      }
      if (!number.get().takesTexts()) {
        notes.add(
            row.error(
                prefix + "phone",
                "Taken, but not a mobile phone: text messages will not reach it."));
      }
      return number.get().e164();
    }
  }
}
