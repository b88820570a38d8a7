"""Plain decimals of a long column, converted place by place for all cells at once."""

import numpy as np
from numpy.typing import NDArray

#: Digits whose integer is exact as a float, and signs of a cell with its sign and its mark.
_MOST_DIGITS, _LONGEST = 15, 17
_POWERS = 10.0 ** np.arange(_MOST_DIGITS + 1)


def plain_decimals(
    signs: NDArray[np.uint8], starts: NDArray[np.int32], ends: NDArray[np.int32], mark: str
) -> NDArray[np.float64] | None:
    """Cells of plain decimals, converted as a whole.

    Digits are gathered as one integer and divided by a power of ten. Below 2^53 and 10^22 both are exact, so that the
    quotient is the correctly rounded value, the same that reading each text alone gives.

    Parameters
    ----------
    signs : uint8 array
        The text that the cells stand in.
    starts, ends : int32 array, shape (cells,)
        Where each cell begins in it, and where the next sign after it stands.
    mark : {".", ","}
        The decimal mark.

    Returns
    -------
    float array, shape (cells,), or None
        NaN for an empty cell; None where a cell is anything but at most 15 digits with at most one sign in front and
        one mark.
    """
    length = ends - starts
    longest = int(length.max(initial=0))
    if not longest:
        return np.full(len(length), np.nan)
    filled = length > 0
    if longest > _LONGEST or (filled & (ends < longest)).any():
        return None
    front = signs[starts]
    negative = filled & (front == ord("-"))
    length -= negative | (filled & (front == ord("+")))
    # one window a cell, all of one width with their ends below each other; then one row for each place of them
    windows = np.ndarray((len(signs) - longest,), f"V{longest}", signs, strides=(1,))
    cells = windows[np.maximum(ends - np.int32(longest), 0)].view(np.uint8).reshape(-1, longest)
    number = np.zeros(len(length))
    digits, decimals = np.zeros((2, len(length)), np.int8)
    behind = np.zeros(len(length), bool)
    for place, row in enumerate(cells.T.copy()):
        inside = length >= longest - place
        value = row - np.uint8(ord("0"))
        digit = inside & (value <= 9)
        if digit.all():
            number *= 10.0
        else:
            marks = inside ^ digit
            if (marks & (behind | (row != ord(mark)))).any():
                return None
            behind |= marks
            value *= digit
            number *= np.where(digit, 10.0, 1.0)
        number += value
        digits += digit
        decimals += digit & behind
    if int(digits.max(initial=0)) > _MOST_DIGITS or (filled & (digits == 0)).any():
        return None
    number /= _POWERS[decimals]
    number[negative] *= -1.0
    number[~filled] = np.nan
    return number
