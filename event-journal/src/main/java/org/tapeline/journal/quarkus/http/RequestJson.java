package org.tapeline.journal.quarkus.http;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.deser.std.StringDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jsr310.deser.InstantDeserializer;
import com.fasterxml.jackson.datatype.jsr310.deser.LocalDateDeserializer;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.function.UnaryOperator;
import org.tapeline.journal.NotText;

/** What no request means is refused when its JSON is read, with the name of the field. */
@Singleton
public class RequestJson implements ObjectMapperCustomizer {
  @Override
  public void customize(ObjectMapper mapper) {
    SimpleModule meant = new SimpleModule("meant");
    meant.addDeserializer(
        String.class, new Meant<>(String.class, StringDeserializer.instance, RequestJson::text));
    meant.addDeserializer(
        LocalDate.class,
        new Meant<>(LocalDate.class, LocalDateDeserializer.INSTANCE, MeantDay::checked));
    meant.addDeserializer(
        Instant.class, new Meant<>(Instant.class, InstantDeserializer.INSTANT, MeantDay::checked));
    mapper.registerModule(meant);
    // No list of ours has gaps, and no code expects one.
    mapper.setDefaultSetterInfo(JsonSetter.Value.forContentNulls(Nulls.FAIL));
  }

  /** After the modules that read days at all. */
  @Override
  public int priority() {
    return MINIMUM_PRIORITY;
  }

  private static String text(String text) {
    if (!NotText.isText(text)) {
      throw new IllegalArgumentException("Not text");
    }
    return text;
  }

  private static final class Meant<T> extends StdScalarDeserializer<T> {
    private static final long serialVersionUID = 1L;

    private final transient JsonDeserializer<T> reads;
    private final transient UnaryOperator<T> check;

    Meant(Class<T> type, JsonDeserializer<T> reads, UnaryOperator<T> check) {
      super(type);
      this.reads = reads;
      this.check = check;
    }

    @Override
    public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
      T value = reads.deserialize(parser, context);
      try {
        return value == null ? null : check.apply(value);
      } catch (IllegalArgumentException | DateTimeException e) {
        throw context.weirdStringException(String.valueOf(value), handledType(), "not meant");
      }
    }
  }
}
