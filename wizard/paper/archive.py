"""What makes a PDF one to keep: PDF/A-2b (ISO 19005-2), the colours of an sRGB screen and metadata as XMP (ISO 16684-1).

The rest of what the standard asks for is so anyway: every typeface is embedded, nothing is encrypted or transparent, no script,
no file attached, and the file has an id. Not checked with a validator here; its rules were read from memory.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from threading import Lock
from typing import Any, Final
from xml.sax.saxutils import escape

_XMP = """<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" pdfaid:part="2" pdfaid:conformance="B"/>
<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmp:CreatorTool="buildsheet" xmp:CreateDate="{date}"
 xmp:ModifyDate="{date}"/>
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title><rdf:Alt>
<rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title></rdf:Description>
</rdf:RDF></x:xmpmeta>
<?xpacket end="w"?>"""
_DATE = "2000-01-01T00:00:00+00:00"
"""The one that the library writes into every file, so that the same pages give the same bytes; the day stands on each page."""
_COLOURS: Final = "sRGB"


def save_to_keep(canvas: Any, title: str) -> None:
    """Save a reportlab canvas as a PDF to keep. title: as it is shown."""
    _add_what_it_lacks(canvas, title)
    with _streams_ended_on_a_line_of_their_own():
        canvas.save()


def _add_what_it_lacks(canvas: Any, title: str) -> None:
    from reportlab.pdfbase.pdfdoc import (  # type: ignore[import-untyped]
        PDFArray,
        PDFDictionary,
        PDFName,
        PDFStream,
        PDFString,
    )

    def stream(content: bytes, **entries: object) -> PDFStream:
        made = PDFStream(PDFDictionary(entries), content)
        made.filters = []  # to be read by whoever knows no compression
        return made

    document = canvas._doc
    metadata = _XMP.format(title=escape(title), date=_DATE).encode()
    profile = document.Reference(stream(_profile(), N=3))
    intent = PDFDictionary({
        "Type": PDFName("OutputIntent"), "S": PDFName("GTS_PDFA1"), "OutputConditionIdentifier": PDFString(_COLOURS),
        "Info": PDFString(_COLOURS), "DestOutputProfile": profile,
    })  # fmt: skip
    catalog = document.Catalog
    catalog.Metadata = stream(metadata, Type=PDFName("Metadata"), Subtype=PDFName("XML"))
    catalog.OutputIntents = PDFArray([intent])
    catalog.__NoDefault__ = [*catalog.__NoDefault__, "OutputIntents"]  # the library writes no others than these


_ONE_AT_A_TIME = Lock()


@contextmanager
def _streams_ended_on_a_line_of_their_own() -> Iterator[None]:
    """The standard wants a line's end before each `endstream`; the library writes none."""
    from reportlab.pdfbase.pdfdoc import PDFStream

    def ended(self: Any, document: Any) -> bytes:
        written: bytes = before(self, document)
        return written.removesuffix(b"endstream\n") + b"\nendstream\n"

    with _ONE_AT_A_TIME:
        before = PDFStream.format
        PDFStream.format = ended
        try:
            yield
        finally:
            PDFStream.format = before


@cache
def _profile() -> bytes:
    """An ICC profile of sRGB, the day and time of its making (bytes 24 to 35 of its header) the same each time."""
    from PIL import ImageCms

    made = ImageCms.ImageCmsProfile(ImageCms.createProfile(_COLOURS)).tobytes()
    return made[:24] + bytes((7, 208, 0, 1, 0, 1, 0, 0, 0, 0, 0, 0)) + made[36:]
