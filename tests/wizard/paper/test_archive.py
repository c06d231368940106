"""PDF/A-2b (ISO 19005-2): what it asks for and forbids, looked for in the bytes. Its rules are from memory; no
validator was at hand."""

import io
import re
import zlib
from xml.etree import ElementTree

import pytest
from fontTools.ttLib import TTFont
from PIL import ImageCms

from wizard.paper.pdf import Document

TITLE = "Plate <7/8 in> & tube"
PDFAID = "{http://www.aiim.org/pdfa/ns/id/}"


@pytest.fixture(scope="module")
def pdf() -> bytes:
    document = Document(TITLE, "Sheet 0123abcd", "Informs, does not certify.")
    page = document.page((210.0, 297.0), "Test")
    page.text((20.0, 200.0), "Words", bold=True)
    page.circle((100.0, 100.0), 20.0)
    page.box(page.area, "outline")
    return document.written()


def streams(pdf: bytes) -> dict[int, tuple[bytes, bytes]]:
    """Dictionary and content of each stream by its object's number; the content as long as the dictionary says."""
    found = {}
    for head in re.finditer(rb"(\d+) 0 obj\n(<<(?:(?!endobj).)*?>>)\nstream\n", pdf, re.DOTALL):
        length = re.search(rb"/Length (\d+)", head[2])
        assert length
        found[int(head[1])] = head[2], pdf[head.end() : head.end() + int(length[1])]
        assert pdf[head.end() + int(length[1]) :].startswith(b"\nendstream\n"), "a line's end before endstream"
    return found


def test_every_stream_ends_as_it_says_and_on_a_line_of_its_own(pdf: bytes) -> None:
    assert len(streams(pdf)) == pdf.count(b"endstream") >= 6


def test_metadata_says_which_part_and_level_and_the_title(pdf: bytes) -> None:
    """Plain bytes in a packet; pdfaid part 2, conformance B."""
    (number,) = re.findall(rb"/Metadata (\d+) 0 R", pdf)
    head, content = streams(pdf)[int(number)]
    assert b"/Type /Metadata" in head and b"/Subtype /XML" in head and b"FlateDecode" not in head
    assert content.startswith('<?xpacket begin="\ufeff"'.encode()) and content.endswith(b'<?xpacket end="w"?>')
    root = ElementTree.fromstring(content)
    says = {key: value for node in root.iter() for key, value in node.attrib.items() if key.startswith(PDFAID)}
    assert says == {f"{PDFAID}part": "2", f"{PDFAID}conformance": "B"}
    titles = [node.text for node in root.iter("{http://www.w3.org/1999/02/22-rdf-syntax-ns#}li")]
    assert titles == [TITLE]


def test_colours_are_those_of_an_srgb_profile_within_the_file(pdf: bytes) -> None:
    intent = re.search(rb"/OutputIntents \[ <<(.*?)>> \]", pdf, re.DOTALL)
    assert intent and b"/S /GTS_PDFA1" in intent[1] and b"/OutputConditionIdentifier (sRGB)" in intent[1]
    number = re.search(rb"/DestOutputProfile (\d+) 0 R", intent[1])
    assert number
    head, content = streams(pdf)[int(number[1])]
    assert b"/N 3" in head
    profile = ImageCms.ImageCmsProfile(io.BytesIO(content)).profile
    assert "sRGB" in profile.profile_description and profile.xcolor_space.strip() == "RGB"
    assert profile.version < 5 and len(content) == int.from_bytes(content[:4], "big")


def test_each_typeface_is_embedded_and_its_letters_have_one_table(pdf: bytes) -> None:
    """Marked symbolic (flag 4) without an encoding of its own, so that its one character table is what counts."""
    fonts = re.findall(rb"<<(?:(?!endobj).)*?/Type /Font /Widths(?:(?!endobj).)*?endobj", pdf, re.DOTALL)
    described = re.findall(rb"/Flags (\d+)(?:(?!endobj).)*?/FontFile2 (\d+) 0 R", pdf, re.DOTALL)
    assert len(fonts) == len(described) == pdf.count(b"/Type /Font ") == 2
    for font in fonts:
        assert b"/Encoding" not in font and b"/ToUnicode" in font and b"/FontDescriptor" in font
    for flags, number in described:
        assert int(flags) & 4
        font = TTFont(io.BytesIO(zlib.decompress(streams(pdf)[int(number)][1])))
        assert len(font["cmap"].tables) == 1


def test_nothing_that_is_forbidden(pdf: bytes) -> None:
    """No encryption, script, attached file, sound or layer; nothing transparent; an id; bytes over 127 in the second line."""
    rest = re.sub(rb"stream\n.*?\nendstream", b"", pdf, flags=re.DOTALL)
    for word in (b"/Encrypt", b"/JavaScript", b"/JS", b"/EmbeddedFile", b"/AA ", b"/OpenAction", b"/ExtGState", b"/SMask",
                 b"/Group", b"/XObject <<\n/", b"/Annots", b"/OCProperties"):  # fmt: skip
        assert word not in rest, word
    assert re.search(rb"trailer\n<<\n/ID \n\[<([0-9a-f]{32})><\1>\]", pdf)
    first, second, _ = pdf.split(b"\n", 2)
    assert re.fullmatch(rb"%PDF-1\.[0-7]", first)
    assert second[:1] == b"%" and all(byte > 127 for byte in second[1:5])


def test_the_same_pages_give_the_same_bytes(pdf: bytes) -> None:
    def written() -> bytes:
        document = Document(TITLE)
        document.page((210.0, 297.0), "Test")
        return document.written()

    assert written() == written()
