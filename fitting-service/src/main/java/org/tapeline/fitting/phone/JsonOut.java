package org.tapeline.fitting.phone;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Writes JSON; what is empty is left out, as in the journal. */
final class JsonOut {
  private final Map<String, Object> fields = new LinkedHashMap<>();

  static JsonOut object() {
    return new JsonOut();
  }

  JsonOut with(String name, Object value) {
    Object plain = value instanceof Optional<?> o ? o.orElse(null) : value;
    if (plain != null) {
      fields.put(name, plain);
    }
    return this;
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder();
    write(this, out);
    return out.toString();
  }

  private static void write(Object value, StringBuilder out) {
    switch (value) {
      case JsonOut object -> writeFields(object.fields, out);
      case List<?> list -> writeList(list, out);
      case String text -> writeText(text, out);
      case Boolean b -> out.append(b.booleanValue());
      case Integer i -> out.append(i.intValue());
      case Double d -> out.append(d.doubleValue());
      case Instant at -> writeText(at.toString(), out);
      case UUID id -> writeText(id.toString(), out);
      default -> throw new IllegalArgumentException("Cannot be written: " + value);
    }
  }

  private static void writeFields(Map<String, Object> fields, StringBuilder out) {
    char before = '{';
    for (Map.Entry<String, Object> field : fields.entrySet()) {
      out.append(before);
      writeText(field.getKey(), out);
      out.append(':');
      write(field.getValue(), out);
      before = ',';
    }
    out.append(fields.isEmpty() ? "{}" : "}");
  }

  private static void writeList(List<?> list, StringBuilder out) {
    char before = '[';
    for (Object each : list) {
      out.append(before);
      write(each, out);
      before = ',';
    }
    out.append(list.isEmpty() ? "[]" : "]");
  }

  private static void writeText(String text, StringBuilder out) {
    out.append('"');
    for (char c : text.toCharArray()) {
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < ' ') {
        String hex = Integer.toHexString(c);
        out.append("\\u").append("0000".substring(hex.length())).append(hex);
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }
}
