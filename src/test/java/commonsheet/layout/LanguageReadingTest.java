package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets in other languages than English, with their decimal commas. */
class LanguageReadingTest {
  @Test
  void german() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Eigenschaft | Wert | Bedingung",
                    "Nennkapazität | 2,55 Ah | Entladen mit 0,2 C bis 2,5 V",
                    "Nennspannung | 3,6 V | ",
                    "Ladeschlussspannung | 4,20 ± 0,05 V | ",
                    "Entladeschlussspannung | 2,5 V | ",
                    "Standardladestrom | 1,25 A | ",
                    "Dauerentladestrom, maximal | 7,5 A | ",
                    "Innenwiderstand (AC, 1 kHz) | ≤ 25 mΩ | ",
                    "Masse | 46,5 g | ",
                    "Ladetemperatur | 0 bis 45 °C | ",
                    "Lagertemperatur, 1 Monat | −20 bis 45 °C | "));
    assertEquals(
        List.of("nominal 2.55 {dischargeRate=0.2, cutoffVoltage=2.5}"), said.of("capacity"));
    assertEquals(List.of("4.2 (4.15..4.25)"), said.of("chargeVoltage"));
    assertEquals(List.of("2.5"), said.of("dischargeCutoffVoltage"));
    assertEquals(List.of("standard 1.25"), said.of("standardChargeCurrent"));
    assertEquals(List.of("maximum 7.5"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(List.of("maximum 25 {frequency=1000}"), said.of("internalResistanceAC"));
    assertEquals(List.of("46.5"), said.of("mass"));
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..45 {duration=2592000}"), said.of("storageTemperature"));
  }

  @Test
  void spanish() {
    Said said =
        Said.on(
            Pages.page()
                .line("Celda de litio para la barca, con tensión nominal y corriente de carga")
                .table(
                    "Parámetro | Valor",
                    "Capacidad nominal | 1,5 Ah",
                    "Tensión nominal | 3,2 V",
                    "Tensión de carga | 3,65 V",
                    "Tensión de corte de descarga | 2,0 V",
                    "Corriente de carga estándar | 0,75 A",
                    "Corriente máxima de descarga continua | 4,5 A",
                    "Peso | 41,5 g",
                    "Temperatura de descarga | −20 a 60 °C"));
    assertEquals(List.of("nominal 1.5"), said.of("capacity"));
    assertEquals(List.of("nominal 3.2"), said.of("nominalVoltage"));
    assertEquals(List.of("3.65"), said.of("chargeVoltage"));
    assertEquals(List.of("2"), said.of("dischargeCutoffVoltage"));
    assertEquals(List.of("standard 0.75"), said.of("standardChargeCurrent"));
    assertEquals(List.of("maximum 4.5"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(List.of("41.5"), said.of("mass"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
  }

  @Test
  void french() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Caractéristique | Valeur",
                    "Capacité nominale | 2,6 Ah",
                    "Tension nominale | 3,6 V",
                    "Tension de charge | 4,2 V",
                    "Courant de charge maximal | 2,6 A",
                    "Courant de décharge continu maximal | 5,2 A",
                    "Masse | 46,5 g",
                    "Température de charge | 0 à 45 °C"));
    assertEquals(List.of("nominal 2.6"), said.of("capacity"));
    assertEquals(List.of("4.2"), said.of("chargeVoltage"));
    assertEquals(List.of("maximum 2.6"), said.of("maximumChargeCurrent"));
    assertEquals(List.of("maximum 5.2"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(List.of("46.5"), said.of("mass"));
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
  }

  @Test
  void chineseBesideEnglish() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "序号 No. | 项目 Item | 参数 Specification",
                    "1 | 标称容量 Nominal capacity | 1000mAh（0.2C5A放电至3.0V）",
                    "2 | 标称电压 Nominal voltage | 3.7V",
                    "3 | 充电限制电压 Limited charge voltage | 4.2V",
                    "4 | 放电终止电压 Discharge cut-off voltage | 3.0V",
                    "5 | 标准充电电流 Standard charge current | 200mA",
                    "6 | 内阻 Internal impedance | ≤６０mΩ"));
    assertEquals(List.of("nominal 1 {dischargeRate=0.2, cutoffVoltage=3}"), said.of("capacity"));
    assertEquals(List.of("4.2"), said.of("chargeVoltage"));
    assertEquals(List.of("3"), said.of("dischargeCutoffVoltage"));
    assertEquals(List.of("standard 0.2"), said.of("standardChargeCurrent"));
    assertEquals(List.of("maximum 60"), said.of("internalResistanceAC"));
  }

  @Test
  void chineseAlone() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "项目 | 规格",
                    "额定容量 | 2500mAh",
                    "标称电压 | 3.6V",
                    "最大充电电流 | 2.5A",
                    "最大持续放电电流 | 7.5A",
                    "重量 | 约46g",
                    "充电温度 | 0~45℃"));
    assertEquals(List.of("rated 2.5"), said.of("capacity"));
    assertEquals(List.of("maximum 2.5"), said.of("maximumChargeCurrent"));
    assertEquals(List.of("maximum 7.5"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(List.of("46"), said.of("mass"));
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
  }

  @Test
  void japanese() {
    Said said =
        Said.on(
            Pages.page()
                .line("リチウムイオン電池セル 仕様書")
                .table(
                    "項目 | 仕様",
                    "公称容量 | 3200mAh（0.2Cで2.5Vまで放電）",
                    "公称電圧 | 3.6V",
                    "充電電圧 | 4.20±0.03V",
                    "放電終止電圧 | 2.5V",
                    "最大充電電流 | 3.2A",
                    "最大連続放電電流 | 6.4A",
                    "内部抵抗 | 40mΩ以下（1kHz）",
                    "質量 | 約48g",
                    "充電温度 | 0～45℃",
                    "放電温度 | -20～60℃"));
    assertEquals(
        List.of("nominal 3.2 {dischargeRate=0.2, cutoffVoltage=2.5}"), said.of("capacity"));
    assertEquals(List.of("4.2 (4.17..4.23)"), said.of("chargeVoltage"));
    assertEquals(List.of("2.5"), said.of("dischargeCutoffVoltage"));
    assertEquals(List.of("maximum 3.2"), said.of("maximumChargeCurrent"));
    assertEquals(List.of("maximum 6.4"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(List.of("maximum 40 {frequency=1000}"), said.of("internalResistanceAC"));
    assertEquals(List.of("48"), said.of("mass"));
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
  }

  @Test
  void korean() {
    Said said =
        Said.on(
            Pages.page()
                .line("리튬 이온 셀 사양서")
                .table(
                    "항목 | 사양",
                    "공칭 용량 | 2600mAh",
                    "공칭전압 | 3.6V",
                    "충전 전압 | 4.20±0.05V",
                    "방전 종지 전압 | 2.75V",
                    "최대 충전 전류 | 2.6A",
                    "최대 연속 방전 전류 | 5.2A",
                    "내부 저항 | 50mΩ 이하 (1kHz)",
                    "무게 | 약 46.5g",
                    "충전 온도 | 0~45℃",
                    "보관 온도 (3개월) | -20~45℃"));
    assertEquals(List.of("nominal 2.6"), said.of("capacity"));
    assertEquals(List.of("nominal 3.6"), said.of("nominalVoltage"));
    assertEquals(List.of("4.2 (4.15..4.25)"), said.of("chargeVoltage"));
    assertEquals(List.of("2.75"), said.of("dischargeCutoffVoltage"));
    assertEquals(List.of("maximum 2.6"), said.of("maximumChargeCurrent"));
    assertEquals(List.of("maximum 5.2"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(List.of("maximum 50 {frequency=1000}"), said.of("internalResistanceAC"));
    assertEquals(List.of("46.5"), said.of("mass"));
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..45 {duration=7776000}"), said.of("storageTemperature"));
  }

  @Test
  void timesInChineseWords() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "项目 | 规格",
                    "标称容量 | 1000mAh",
                    "标称电压 | 3.7V",
                    "充电限制电压 | 4.2V",
                    "重量 | 约20g",
                    "储存温度（一个月） | -20~60℃",
                    "储存温度（三个月） | -20~45℃",
                    "储存温度（十二个月） | -20~25℃"));
    assertEquals(
        List.of(
            "-20..60 {duration=2592000}",
            "-20..45 {duration=7776000}",
            "-20..25 {duration=31536000}"),
        said.of("storageTemperature"));
  }

  @Test
  void aDecimalCommaIsToldFromAThousandsComma() {
    Said english =
        Said.on(
            Pages.page().table("Item | Value", "Typical capacity | 2,550 mAh"),
            Pages.rest("Nominal capacity"));
    assertEquals(List.of("typical 2.55"), english.of("capacity"));
    Said german =
        Said.on(
            Pages.page()
                .table(
                    "Eigenschaft | Wert",
                    "Nennkapazität | 2.550 mAh",
                    "Nennspannung | 3,6 V",
                    "Ladestrom, maximal | 2,5 A",
                    "Masse | 46,5 g",
                    "Ladeschlussspannung | 4,2 V"));
    assertEquals(List.of("nominal 2.55"), german.of("capacity"));
    assertEquals(List.of("nominal 3.6"), german.of("nominalVoltage"));
  }

  @Test
  void languagesAreToldByTheirScriptAndSmallWords() {
    assertEquals(List.of("en"), Languages.of("Nominal capacity of the cell"));
    assertEquals(List.of("en", "zh"), Languages.of("标称电压 Nominal voltage"));
    assertEquals(List.of("en", "ja", "zh"), Languages.of("公称容量 セル"));
    assertEquals(List.of("en", "ko"), Languages.of("공칭 용량"));
    assertEquals(List.of("en", "de"), Languages.of("Die Zelle wird bei 20 °C mit der Spannung …"));
  }

  /** As scans are recognised: the recogniser of pictures knows few accents. */
  @Test
  void spanishWithoutItsAccents() {
    Said said =
        Said.on(
            Pages.page()
                .line("Celda de litio para la barca, con tension nominal y corriente de carga")
                .table(
                    "Parametro | Valor",
                    "Capacidad nominal | 1500 mAh",
                    "Capacidad minima | 1450 mAh",
                    "Tension nominal | 3,2 V",
                    "Corriente de carga maxima | 1,5 A",
                    "Corriente maxima de descarga continua | 4,5 A",
                    "Temperatura de almacenamiento, 1 ano | −10 a 25 °C"));
    assertEquals(List.of("nominal 1.5", "minimum 1.45"), said.of("capacity"));
    assertEquals(List.of("maximum 1.5"), said.of("maximumChargeCurrent"));
    assertEquals(List.of("maximum 4.5"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(List.of("-10..25 {duration=31536000}"), said.of("storageTemperature"));
  }
}
