package org.tapeline.fitting.phone;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON into maps, lists, strings, numbers (as {@code Double}), booleans and {@code null}. So
 * small because it goes over to the phone, where no library of the server can follow.
 */
final class JsonText {
  private final String text;
  private int at;

  private JsonText(String text) {
    this.text = text;
  }

  /**
   * @throws IllegalArgumentException for what is no JSON
   */
  static Object read(String text) {
    JsonText json = new JsonText(text);
    Object value = json.value();
    json.skipSpace();
    if (json.at != text.length()) {
      throw json.bad();
    }
    return value;
  }

  private Object value() {
    skipSpace();
    return switch (peek()) {
      case '{' -> object();
      case '[' -> list();
      case '"' -> string();
      case 't' -> word("true", true);
      case 'f' -> word("false", false);
      case 'n' -> word("null", null);
      default -> number();
    };
  }

  private Map<String, Object> object() {
    Map<String, Object> object = new LinkedHashMap<>();
    take('{');
    skipSpace();
    if (peek() == '}') {
      take('}');
      return object;
    }
    while (true) {
      skipSpace();
      String name = string();
      skipSpace();
      take(':');
      object.put(name, value());
      skipSpace();
      if (peek() != ',') {
        take('}');
        return object;
      }
      take(',');
    }
  }

  private List<Object> list() {
    List<Object> list = new ArrayList<>();
    take('[');
    skipSpace();
    if (peek() == ']') {
      take(']');
      return list;
    }
    while (true) {
      list.add(value());
      skipSpace();
      if (peek() != ',') {
        take(']');
        return list;
      }
      take(',');
    }
  }

  private String string() {
    take('"');
    StringBuilder out = new StringBuilder();
    while (peek() != '"') {
      char c = text.charAt(at++);
      out.append(c == '\\' ? escaped() : c);
    }
    take('"');
    return out.toString();
  }

  private char escaped() {
    char c = peek();
    at++;
    return switch (c) {
      case 'n' -> '\n';
      case 't' -> '\t';
      case 'r' -> '\r';
      case 'b' -> '\b';
      case 'f' -> '\f';
      case 'u' -> {
        at += 4;
        yield (char) Integer.parseInt(text.substring(at - 4, at), 16);
      }
      default -> c;
    };
  }

  private Double number() {
    int from = at;
    while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return Double.valueOf(text.substring(from, at));
  }

  private Object word(String word, Object value) {
    if (!text.startsWith(word, at)) {
      throw bad();
    }
    at += word.length();
    return value;
  }

  private void skipSpace() {
    while (at < text.length() && text.charAt(at) <= ' ') {
      at++;
    }
  }

  private char peek() {
    if (at >= text.length()) {
      throw bad();
    }
    return text.charAt(at);
  }

  private void take(char wanted) {
    if (peek() != wanted) {
      throw bad();
    }
    at++;
  }

  private IllegalArgumentException bad() {
    return new IllegalArgumentException("Not readable as JSON at character " + at);
  }
}
