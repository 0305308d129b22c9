"""Creep: how concrete's strain grows under a lasting load."""

from __future__ import annotations


def creep_coefficient(
    fcm_mpa: float, notional_mm: float, humidity_percent: float, loaded_at_days: float
) -> float:
    """Final creep strain over the elastic strain at 28 days, a pure number.

    ``φ(∞, t0) = φ_RH β(f_cm) β(t0)``.

    Parameters
    ----------
    fcm_mpa
        Mean compressive strength at 28 days.
    notional_mm
        ``h_0 = 2 A_c / u``: the thickness of a slab that dries on both faces.
    humidity_percent
        Relative humidity of the air.
    loaded_at_days
        Age at loading, adjusted to 20 °C, cement of class N.

    Source
    ------
    EN 1992-1-1 3.1.4(2) and annex B, (B.1) to (B.5), (B.8c).
    """
    dry = (1.0 - humidity_percent / 100.0) / (0.1 * notional_mm ** (1.0 / 3.0))
    if fcm_mpa <= 35.0:
        by_humidity = 1.0 + dry
    else:
        by_humidity = (1.0 + dry * (35.0 / fcm_mpa) ** 0.7) * (35.0 / fcm_mpa) ** 0.2
    by_strength = 16.8 / fcm_mpa**0.5
    by_age = 1.0 / (0.1 + loaded_at_days**0.2)
    return float(by_humidity * by_strength * by_age)
