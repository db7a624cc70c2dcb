package org.tapeline.proof.fuzz.endpoint;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Text as it travels in addresses and forms; halves of surrogate pairs travel too. */
final class Encoded {
  static final String BOUNDARY = "----part-of-a-form";
  private static final String UNRESERVED = "-._~";

  private Encoded() {}

  static String percent(String text) {
    StringBuilder out = new StringBuilder();
    for (byte b : utf8(text)) {
      char c = (char) (b & 0xff);
      boolean plain = c < 128 && (Character.isLetterOrDigit(c) || UNRESERVED.indexOf(c) >= 0);
      out.append(plain ? String.valueOf(c) : String.format("%%%02X", (int) c));
    }
    return out.toString();
  }

  /** As UTF-8, a half of a surrogate pair as if it were a character, which UTF-8 forbids. */
  static byte[] utf8(String text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    text.codePoints()
        .forEach(
            c -> {
              if (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE) {
                out.write(0xe0 | c >> 12);
                out.write(0x80 | c >> 6 & 0x3f);
                out.write(0x80 | c & 0x3f);
              } else {
                out.writeBytes(Character.toString(c).getBytes(StandardCharsets.UTF_8));
              }
            });
    return out.toByteArray();
  }

  static byte[] form(List<Map.Entry<String, String>> fields) {
    return fields.stream()
        .map(field -> percent(field.getKey()) + "=" + percent(field.getValue()))
        .collect(Collectors.joining("&"))
        .getBytes(StandardCharsets.US_ASCII);
  }

  /** Fields named {@code file} and {@code photo} as files. */
  static byte[] multipart(List<Map.Entry<String, String>> fields) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (Map.Entry<String, String> field : fields) {
      boolean file = field.getKey().matches("file|photo");
      out.writeBytes(
          utf8(
              "--"
                  + BOUNDARY
                  + "\r\nContent-Disposition: form-data; name=\""
                  + field.getKey()
                  + (file ? "\"; filename=\"a.csv\"\r\nContent-Type: text/csv" : "\"")
                  + "\r\n\r\n"));
      out.writeBytes(utf8(field.getValue()));
      out.writeBytes(utf8("\r\n"));
    }
    out.writeBytes(utf8("--" + BOUNDARY + "--\r\n"));
    return out.toByteArray();
  }
}
