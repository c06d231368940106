"""The small changes to a source that tests ought to notice, each as a piece of text to put in place of another."""

import ast
import re
from collections.abc import Iterator
from dataclasses import dataclass

COMPARISONS = {"<": "<=", "<=": "<", ">": ">=", ">=": ">", "==": "!=", "!=": "==", "in": "not in", "not in": "in"}
COMPARISONS |= {"is": "is not", "is not": "is"}
ARITHMETIC = {"+": "-", "-": "+", "*": "/", "/": "*"}
JOINED = {"and": "or", "or": "and"}
VERDICTS = {"stop": "watch", "watch": "good", "good": "watch"}
CLOSENESS = '__import__("rules.measure.closeness", fromlist=["closeness"])'
CALLED = {
    "min": "max",
    "max": "min",
    "reaches": f"{CLOSENESS}.more_than",
    "more_than": f"{CLOSENESS}.reaches",
}
RETURNED = {None: "1", "": '"?"'}
GUARDS = ("frozen", "slots", "strict", "kw_only")
FACTOR = 1.1
"""By what a figure is changed."""


@dataclass(frozen=True, slots=True)
class Mutation:
    """What to write instead of `was`. Lines count from 1, places in the text from 0.

    first, last: the lines of the statement it stands in. in_function: whether it is run when a test comes there, and not
    when the module is loaded. names: the classes, functions and constants it stands in.
    """

    start: int
    was: str
    now: str
    first: int
    last: int
    in_function: bool
    names: tuple[str, ...]

    def applied(self, source: str) -> str:
        """The source with the change made."""
        assert source.startswith(self.was, self.start)
        return source[: self.start] + self.now + source[self.start + len(self.was) :]


def mutations(source: str) -> list[Mutation]:
    """Every change of a source, in the order of its text."""
    found = _Finder(source)
    found.visit(ast.parse(source))
    return sorted(found.found, key=lambda one: (one.start, one.now))


class _Finder(ast.NodeVisitor):
    """Walks the tree and knows in which statement, function and class it is."""

    def __init__(self, source: str) -> None:
        self.source = source
        self.found: list[Mutation] = []
        self._lines = [0]
        for line in source.encode().splitlines(keepends=True):
            self._lines.append(self._lines[-1] + len(line))
        self._bytes = source.encode()
        self._statement: ast.stmt | None = None
        self._in_function = 0
        self._names: list[str] = []

    def visit(self, node: ast.AST) -> None:
        """Any node, remembering the statement it is in."""
        outer = self._statement
        if isinstance(node, ast.stmt):
            self._statement = node
        super().visit(node)
        self._statement = outer

    def visit_FunctionDef(self, node: ast.FunctionDef) -> None:
        """Decorators and defaults are run when the module is loaded; annotations never matter; the body is run later."""
        self._names.append(node.name)
        for outside in (*node.decorator_list, *node.args.defaults, *filter(None, node.args.kw_defaults)):
            self.visit(outside)
        self._in_function += 1
        self._body(node.body)
        self._in_function -= 1
        self._names.pop()

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        """A class is known by its own name and its attributes' names."""
        self._names.append(node.name)
        for outside in (*node.decorator_list, *node.bases):
            self.visit(outside)
        self._body(node.body)
        self._names.pop()

    def visit_Lambda(self, node: ast.Lambda) -> None:
        """What a lambda does is run later."""
        self._in_function += 1
        self.visit(node.body)
        self._in_function -= 1

    def visit_Module(self, node: ast.Module) -> None:
        """All but the docstring."""
        self._body(node.body)

    def _body(self, body: list[ast.stmt]) -> None:
        for one in body:
            if not (isinstance(one, ast.Expr) and isinstance(one.value, ast.Constant)):
                self.visit(one)

    def visit_Assign(self, node: ast.Assign) -> None:
        """What is assigned is known by its name."""
        self._assigned([target.id for target in node.targets if isinstance(target, ast.Name)], node.value)

    def visit_AnnAssign(self, node: ast.AnnAssign) -> None:
        """The same; its annotation does not matter."""
        self._assigned([node.target.id] if isinstance(node.target, ast.Name) else [], node.value)

    def _assigned(self, names: list[str], value: ast.expr | None) -> None:
        if value is None:
            return
        outer = list(self._names)
        if not self._in_function:
            self._names += names
        self.visit(value)
        self._names = outer

    def visit_keyword(self, node: ast.keyword) -> None:
        """What only guards against slips of the programmer is left alone."""
        if node.arg not in GUARDS:
            self.visit(node.value)

    def visit_JoinedStr(self, node: ast.JoinedStr) -> None:
        """Left alone: what is inside has no place of its own in the text."""

    def visit_Subscript(self, node: ast.Subscript) -> None:
        """A type with its choices is an annotation wherever it stands."""
        if not (isinstance(node.value, ast.Name) and node.value.id in ("Literal", "Annotated")):
            self.generic_visit(node)

    def visit_Constant(self, node: ast.Constant) -> None:
        """Numbers, verdicts, yes and no."""
        value = node.value
        if isinstance(value, bool):
            self._whole(node, str(not value))
        elif isinstance(value, int):
            self._whole(node, str(value + 1))
        elif isinstance(value, float):
            self._whole(node, repr(value * FACTOR if value else 1.0))
        elif isinstance(value, str) and value in VERDICTS:
            self._whole(node, repr(VERDICTS[value]))

    def visit_Return(self, node: ast.Return) -> None:
        """Nothing, and an empty text, given back."""
        value = node.value
        if isinstance(value, ast.Constant) and (value.value is None or value.value == ""):
            self._whole(value, RETURNED[value.value])
        self.generic_visit(node)

    def visit_Name(self, node: ast.Name) -> None:
        """The smaller or the larger; the limit reached or passed."""
        if node.id in CALLED and isinstance(node.ctx, ast.Load):
            self._whole(node, CALLED[node.id])

    def visit_UnaryOp(self, node: ast.UnaryOp) -> None:
        """A sign or a `not` left out."""
        if isinstance(node.op, ast.Not):
            self._add(self._place(node), "not ", "")
        elif isinstance(node.op, ast.USub) and not isinstance(node.operand, ast.Constant):
            self._add(self._place(node), "-", "")
        self.generic_visit(node)

    def visit_Compare(self, node: ast.Compare) -> None:
        """One comparison for another."""
        for left, right in zip((node.left, *node.comparators), node.comparators, strict=False):
            self._between(left, right, COMPARISONS, r"not\s+in|is\s+not|<=|>=|==|!=|<|>|\bin\b|\bis\b")
        self.generic_visit(node)

    def visit_BinOp(self, node: ast.BinOp) -> None:
        """One kind of arithmetic for another; texts are left alone."""
        texts = (ast.JoinedStr, ast.List, ast.Tuple)
        sides = (node.left, node.right)
        text = any(isinstance(side, texts) or isinstance(getattr(side, "value", 0), str) for side in sides)
        if not text and isinstance(node.op, ast.Add | ast.Sub | ast.Mult | ast.Div):
            self._between(node.left, node.right, ARITHMETIC, r"[-+*/]")
        self.generic_visit(node)

    def visit_BoolOp(self, node: ast.BoolOp) -> None:
        """One `and` or `or` for the other."""
        for left, right in zip(node.values, node.values[1:], strict=False):
            self._between(left, right, JOINED, r"\b(?:and|or)\b")
        self.generic_visit(node)

    def _between(self, left: ast.expr, right: ast.expr, instead: dict[str, str], pattern: str) -> None:
        start, end = self._place(left, end=True), self._place(right)
        if operator := re.search(pattern, re.sub(r"#.*", lambda note: " " * len(note.group()), self.source[start:end])):
            was = operator.group()
            self._add(start + operator.start(), was, instead[" ".join(was.split())])

    def _whole(self, node: ast.expr, now: str) -> None:
        start = self._place(node)
        self._add(start, self.source[start : self._place(node, end=True)], now)

    def _place(self, node: ast.AST, *, end: bool = False) -> int:
        line, column = (
            (node.end_lineno, node.end_col_offset) if end else (node.lineno, node.col_offset)  # type: ignore[attr-defined]
        )
        return len(self._bytes[: self._lines[line - 1] + column].decode())

    def _add(self, start: int, was: str, now: str) -> None:
        statement = self._statement
        assert statement is not None
        first, last = statement.lineno, statement.end_lineno or statement.lineno
        line = self.source.count("\n", 0, start) + 1
        if hasattr(statement, "body"):
            first = last = line
        if self.source.startswith(was, start):
            names = tuple(self._names)
            self.found.append(Mutation(start, was, now, first, last, bool(self._in_function), names))


def lines_run_by_name(sources: dict[str, str]) -> Iterator[tuple[str, str, range]]:
    """For each function of the sources: every name it takes, its own among them, with its file and the lines of its body."""
    for path, source in sources.items():
        for node in ast.walk(ast.parse(source)):
            if isinstance(node, ast.FunctionDef):
                lines = range(node.body[0].lineno, (node.end_lineno or node.lineno) + 1)
                for name in {node.name} | names_in(node):
                    yield name, path, lines


def names_in(node: ast.AST) -> set[str]:
    """Every name and attribute that stands in a piece of source."""
    names = {inside.id for inside in ast.walk(node) if isinstance(inside, ast.Name)}
    return names | {inside.attr for inside in ast.walk(node) if isinstance(inside, ast.Attribute)}
