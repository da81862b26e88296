package org.ripewood.api.kit;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import java.io.IOException;

/** A finite number, never words such as "NaN"; negative zero is zero. */
final class StrictDecimal extends StdScalarDeserializer<Double> {

    private static final long serialVersionUID = 1L;

    StrictDecimal() {
        super(Double.class);
    }

    @Override
    public Double deserialize(JsonParser parser, DeserializationContext context)
            throws IOException {
        if (!parser.currentToken().isNumeric()) {
            return context.reportInputMismatch(this, "expected a number");
        }
        double amount = parser.getDoubleValue();
        if (!Double.isFinite(amount)) {
            return context.reportInputMismatch(this, "expected a number that can be written out");
        }
        // adding nothing turns -0.0 into 0.0
        return amount + 0.0;
    }
}
