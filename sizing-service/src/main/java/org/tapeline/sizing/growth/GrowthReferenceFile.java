package org.tapeline.sizing.growth;

import java.io.IOException;
import java.io.Reader;
import java.util.EnumMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a growth reference: columns {@code sex, age_years, L, M_cm, S}. */
public final class GrowthReferenceFile {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
  private static final double MILLIMETRES = 10;

  private GrowthReferenceFile() {}

  /**
   * @throws IOException when it cannot be read
   * @throws IllegalArgumentException with what is wrong in it, and where
   */
  public static GrowthReference read(String name, Reader reader) throws IOException {
    Map<Sex, NavigableMap<Double, Lms>> ages = new EnumMap<>(Sex.class);
    for (Sex sex : Sex.values()) {
      ages.put(sex, new TreeMap<>());
    }
    try (CSVParser parser = CSVParser.parse(reader, FORMAT)) {
      for (CSVRecord row : parser) {
        Lms before = ages.get(sex(name, row)).put(number(name, row, "age_years"), lms(name, row));
        if (before != null) {
          throw wrong(name, row, "stands there twice");
        }
      }
    }
    if (ages.values().stream().anyMatch(table -> table.size() < 2)) {
      throw new IllegalArgumentException(name + " needs two ages or more of both sexes");
    }
    return new GrowthReference(name, ages);
  }

  private static Sex sex(String name, CSVRecord row) {
    return switch (row.get("sex")) {
      case "male" -> Sex.MALE;
      case "female" -> Sex.FEMALE;
      default -> throw wrong(name, row, "sex is male or female");
    };
  }

  private static Lms lms(String name, CSVRecord row) {
    double m = number(name, row, "M_cm") * MILLIMETRES;
    double s = number(name, row, "S");
    if (m < 300 || m > 750 || s <= 0 || s > 0.2) {
      throw wrong(name, row, "M is 30 to 75 cm and S above 0 to 0.2");
    }
    return new Lms(number(name, row, "L"), m, s);
  }

  private static double number(String name, CSVRecord row, String column) {
    try {
      return Double.parseDouble(row.get(column));
    } catch (NumberFormatException e) {
      throw wrong(name, row, column + " is a number with a decimal point");
    }
  }

  private static IllegalArgumentException wrong(String name, CSVRecord row, String what) {
    return new IllegalArgumentException(
        name + ", row " + (row.getRecordNumber() + 1) + ": " + what);
  }
}
