"""What was found wrong, and how much was looked at."""

from collections import Counter
from dataclasses import dataclass, field


@dataclass
class Report:
    """Faults by check, and a count of what each check looked at."""

    faults: list[tuple[str, str]] = field(default_factory=list)
    looked_at: Counter = field(default_factory=Counter)

    def fault(self, check: str, text: str) -> None:
        self.faults.append((check, text))

    def looked(self, check: str, count: int = 1) -> None:
        self.looked_at[check] += count

    def failed(self, check: str) -> bool:
        return any(name == check for name, _ in self.faults)

    def print(self) -> None:
        broken = Counter(name for name, _ in self.faults)
        for check, count in sorted(self.looked_at.items()):
            print(f"  {check}: {count} looked at, {broken[check]} wrong")
        for check, text in self.faults:
            print(f"FAULT [{check}] {text}")
