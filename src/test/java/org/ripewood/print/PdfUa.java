package org.ripewood.print;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** What veraPDF, an open validator, finds wrong by ISO 14289-1. */
final class PdfUa {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfUa() {}

    static List<String> faults(byte[] pdf) throws Exception {
        var flavour = PDFAFlavour.PDFUA_1;
        try (var parser =
                        Foundries.defaultInstance()
                                .createParser(new ByteArrayInputStream(pdf), flavour);
                var validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(test -> test.getStatus() == TestAssertion.Status.FAILED)
                    .map(test -> test.getRuleId().getClause() + ": " + test.getMessage())
                    .distinct()
                    .toList();
        }
    }
}
