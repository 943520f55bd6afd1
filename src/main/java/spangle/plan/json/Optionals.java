package spangle.plan.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.ContextualDeserializer;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.type.TypeFactory;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalInt;

/** What may be missing stands in the file all the same, as null. */
final class Optionals extends SimpleModule {
  private static final long serialVersionUID = 1L;

  Optionals() {
    super("optionals");
    addSerializer(new WriteOptional());
    addDeserializer(Optional.class, new ReadOptional(TypeFactory.unknownType()));
    addSerializer(OptionalInt.class, new WriteOptionalInt());
    addDeserializer(OptionalInt.class, new ReadOptionalInt());
  }

  private static final class WriteOptional extends StdSerializer<Optional<?>> {
    private static final long serialVersionUID = 1L;

    WriteOptional() {
      super(Optional.class, false);
    }

    @Override
    public void serialize(Optional<?> value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      provider.defaultSerializeValue(value.orElse(null), json);
    }
  }

  private static final class ReadOptional extends StdDeserializer<Optional<?>>
      implements ContextualDeserializer {
    private static final long serialVersionUID = 1L;
    private final JavaType content;

    ReadOptional(JavaType content) {
      super(Optional.class);
      this.content = content;
    }

    @Override
    public JsonDeserializer<?> createContextual(
        DeserializationContext context, BeanProperty property) {
      JavaType whole = property == null ? context.getContextualType() : property.getType();
      return new ReadOptional(whole.containedTypeOrUnknown(0));
    }

    @Override
    public Optional<?> deserialize(JsonParser json, DeserializationContext context)
        throws IOException {
      return Optional.of(context.readValue(json, content));
    }

    @Override
    public Optional<?> getNullValue(DeserializationContext context) {
      return Optional.empty();
    }
  }

  private static final class WriteOptionalInt extends StdSerializer<OptionalInt> {
    private static final long serialVersionUID = 1L;

    WriteOptionalInt() {
      super(OptionalInt.class);
    }

    @Override
    public void serialize(OptionalInt value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      if (value.isPresent()) {
        json.writeNumber(value.getAsInt());
      } else {
        json.writeNull();
      }
    }
  }

  private static final class ReadOptionalInt extends StdDeserializer<OptionalInt> {
    private static final long serialVersionUID = 1L;

    ReadOptionalInt() {
      super(OptionalInt.class);
    }

    @Override
    public OptionalInt deserialize(JsonParser json, DeserializationContext context)
        throws IOException {
      return OptionalInt.of(context.readValue(json, Integer.class));
    }

    @Override
    public OptionalInt getNullValue(DeserializationContext context) {
      return OptionalInt.empty();
    }
  }
}
